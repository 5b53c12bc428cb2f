import type { CellValue } from "../../../src/measure/cell-value";
import { columnLines } from "../../../src/pane/state/setup/column-lines";
import { readSetup } from "../../../src/reading/setup/setup";
import { rowAt } from "../../../src/pane/state/checked-area";
import { paneCommands } from "../../../src/pane/state/commands";
import { findTests } from "../../../src/pane/state/find-tests";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { fakeHost } from "../fake-host";

/** Two forms with a blank row between them; the second was left packed, which voids it (memory: C173). */
const FORMS: CellValue[][] = [
  ["Ticket", 601],
  ["First reading", 6],
  ["Second reading", 6],
  ["Alcohol (pt)", 2],
  ["Packed?", "No"],
  [null, null],
  ["Ticket", 604],
  ["First reading", 6.5],
  ["Second reading", 6.5],
  ["Alcohol (pt)", 2],
  ["Packed?", "Yes"],
];

async function checked() {
  const cells = FORMS.map((row) => [...row]);
  const fake = fakeHost(cells, 2, 1);
  const store = createPaneStore();
  const commands = paneCommands(store, fake.host);
  await commands.check();
  return { ...fake, cells, store, commands, area: store.get().checked! };
}

test("the check says that it found forms", async () => {
  const { store, area } = await checked();
  expect(store.get().status).toContain("Tests: 2. ");
  expect(store.get().status).toContain("2 forms on this sheet.");
  expect(area.result.results.map(({ state }) => state)).toEqual(["valid", "void"]);
});

test("a mark and a finding lead to the cell of the value", async () => {
  const { commands, asked, area } = await checked();
  const packed = area.result.findings.find(({ rule }) => rule === "packed-concrete-left")!;
  // The block begins in row 3, column B, and “Yes” is in its 11th row.
  const cell = { sheetId: "s1", row: 12, column: 2 };
  await commands.goTo(packed);
  expect(asked.selected).toEqual([cell]);
  await commands.mark();
  expect(asked.marks).toContainEqual(expect.objectContaining({ ...cell, weight: "void" }));
});

test("the cell under the cursor belongs to its form", async () => {
  const { area } = await checked();
  const at = (row: number) => rowAt(area, { sheetId: "s1", row, column: 2 })?.sample;
  expect([at(3), at(9), at(7)]).toEqual(["601", "604", undefined]);
});

test("labels are listed with their cells", async () => {
  const lines = columnLines((await checked()).area, readSetup([]));
  expect(lines.map(({ place, header }) => [place, header])).toContainEqual([
    "B5",
    "Second reading",
  ]);
});

test("a row put in above does not lead to another cell", async () => {
  const { cells, commands, asked, area } = await checked();
  const packed = area.result.findings.find(({ rule }) => rule === "packed-concrete-left")!;
  cells.unshift(["Day sheet", null]);
  await commands.goTo(packed);
  expect(asked.selected.at(-1)).toEqual({ sheetId: "s1", row: 13, column: 2 });
});

test("forms are read over blank rows, wherever the selected cell stands", async () => {
  const { host, whole } = fakeHost(FORMS);
  const all = host.readAgain;
  const first = { ...whole(), rows: 5 };
  host.read = async () => ({ area: first, address: "A1:B5", values: FORMS.slice(0, 5) });
  let asked = 0;
  host.readAgain = async (before) => {
    asked = before.area.rows;
    return all(before);
  };
  expect(await findTests(host, () => {})).toMatchObject({ read: { area: { rows: 11 } } });
  expect(asked).toBeGreaterThan(1000);
});

test("a label may be taken for something else, which is kept and holds for every form", async () => {
  const { store, commands, others } = await checked();
  await commands.choose({ header: "Alcohol (pt)", field: "alcohol", unit: "oz" });
  // 2 oz are far below the first amount of the table, and nothing is taken off.
  const amounts = () =>
    store.get().checked!.result.results.map(({ values }) => values.alcohol?.unit);
  expect(amounts()).toEqual(["oz", "oz"]);
  await commands.keepSetup();
  expect(readSetup(others.get("Fresh setup")!).columns).toEqual([
    { header: "Alcohol (pt)", field: "alcohol", unit: "oz" },
  ]);
  await commands.check();
  expect(amounts()).toEqual(["oz", "oz"]);
});
