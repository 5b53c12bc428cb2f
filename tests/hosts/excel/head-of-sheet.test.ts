import { excelHost } from "../../../src/hosts/excel/excel-host";
import { say } from "../../../src/messages/pane-catalogue";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { rectangleFrom } from "../../excel-client/block";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import { edit, insertRows, sortRows } from "../../excel-client/user-edits";
import type { Held } from "../../excel-client/sheet-model";
import { WorkbookModel } from "../../excel-client/workbook-model";

/* The head of a sheet, which a blank row sets apart from its table, and what users do to both. */

const excel = startExcel();
afterAll(untilReleased);

const HEADERS: Held[] = ["Sample", "First reading", "Second reading", "Alcohol (pt)"];
const TABLE: Held[][] = [HEADERS, ["A-1", 4.25, 4.25, 2], ["A-2", 6.25, 6.25, 2]];
const row = (...cells: Held[]): Held[] => HEADERS.map((_, at) => cells[at] ?? "");
const HEAD = [row("Daily log"), row("Specified air", "6 ± 1.5"), row()];

/** A pane beside a sheet of these rows, the last of which is selected. */
function pane(...rows: Held[][]) {
  excel.workbook = new WorkbookModel();
  const sheet = excel.workbook.front;
  sheet.grid = rows;
  excel.workbook.select(sheet, rectangleFrom(`B${rows.length}`));
  const store = createPaneStore();
  const commands = paneCommands(store, excelHost());
  const verdicts = () =>
    store.get().checked!.result.results.map(({ state, specification }) => specification ?? state);
  const marked = () => sheet.formats.flatMap(({ areas }) => areas.map(({ top }) => top + 1));
  return { sheet, store, commands, verdicts, marked };
}

test("what stands above a blank row is read with the table", async () => {
  const { store, commands, verdicts } = pane(...HEAD, ...TABLE);
  await commands.check();
  expect(verdicts()).toEqual(["below", "within"]);
  expect(store.get().status).toContain("Loads!A1:D6");
});

test("the title of another method there leaves the tests open", async () => {
  const { commands, verdicts } = pane(row("Air by pressure method"), row(), ...TABLE);
  await commands.check();
  expect(verdicts()).toEqual(["incomplete", "incomplete"]);
});

test("a title that says nothing of the tests is left where it is", async () => {
  const { store, commands } = pane(row("Daily log"), row(), ...TABLE);
  await commands.check();
  expect(store.get().status).toContain("Loads!A3:D5");
});

test("another table there, and what stands above it, is not read with this one", async () => {
  const { store, commands, verdicts } = pane(...HEAD, ...TABLE, row(), ...TABLE);
  await commands.check();
  expect(store.get().status).toContain("Loads!A8:D10");
  expect(verdicts()).toEqual(["valid", "valid"]);
});

test("limits that are edited after the check are looked at again before marking", async () => {
  const { sheet, store, commands, verdicts } = pane(...HEAD, ...TABLE);
  await commands.check();
  edit(sheet, 1, 1, "4 ± 1");
  await commands.mark();
  expect(store.get().status).toContain(say("pane-checked-anew", { address: "Loads!A1:D6" }));
  expect(verdicts()).toEqual(["within", "above"]);
});

test("rows put in between head and table change nothing", async () => {
  const { sheet, store, commands, verdicts, marked } = pane(...HEAD, ...TABLE);
  await commands.check();
  insertRows(sheet, 2, 2);
  await commands.check();
  expect(verdicts()).toEqual(["below", "within"]);
  expect(store.get().status).toContain("Loads!A1:D8");
  await commands.mark();
  expect(marked()).toContain(7);
  await commands.unmark();
  expect(marked()).toEqual([]);
});

test("a sort of the table keeps the verdict with its test", async () => {
  const { sheet, store, commands, verdicts } = pane(...HEAD, ...TABLE);
  await commands.check();
  sortRows(sheet, rectangleFrom("A5:D6"), 1);
  sheet.grid.splice(4, 2, ...[sheet.grid[5], sheet.grid[4]]);
  await commands.mark();
  expect(verdicts().sort()).toEqual(["below", "within"]);
  expect(store.get().error).toBe("");
});

test("a table with a head is found on the sheet when another cell is selected", async () => {
  const { sheet, commands, verdicts } = pane(...HEAD, ...TABLE);
  excel.workbook.select(sheet, rectangleFrom("H20"));
  await commands.check();
  expect(verdicts()).toEqual(["below", "within"]);
});

/* So many cells are not all looked at again along with the marking. */
test.each([3, 4, 5])(
  "limits of a long table that are edited right before the %ith request of marking are looked at again",
  async (call) => {
    const long = Array.from({ length: 12_000 }, (_, i): Held[] => [`B-${i}`, 6, 6, 2]);
    const { sheet, commands, verdicts, marked } = pane(
      row("Mix", "LW-1"),
      ...HEAD.slice(1),
      ...TABLE,
      ...long,
    );
    await commands.check();
    expect(verdicts()[0]).toBe("below");
    let before = false;
    excel.interrupt(call, () => {
      before = marked().length === 0;
      edit(sheet, 1, 1, "4 ± 1");
    });
    await commands.mark();
    const came = excel.takeBackInterruptions() === 0;
    if (came && before) expect(verdicts()[0]).toBe("within");
  },
);
