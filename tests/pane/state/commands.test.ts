import type { CellValue } from "../../../src/measure/cell-value";
import { Problem } from "../../../src/measure/problem";
import { say, sentenceOf } from "../../../src/messages/pane-catalogue";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { fakeHost, HEADER } from "../fake-host";

const ROWS: CellValue[][] = [
  HEADER,
  ["S-01", 6, 6, 16, 1],
  ["S-02", 6, 6, 16, "lots"],
  ["S-03", "six", 6, 16, 1],
];

function pane(cells = ROWS, top = 0, left = 0) {
  const fake = fakeHost(cells, top, left);
  const store = createPaneStore();
  return { ...fake, store, commands: paneCommands(store, fake.host) };
}

test("a check says what was checked and found", async () => {
  const { store, commands } = pane();
  await commands.check();
  expect(store.get().status).toBe("Loads!A1:E4 is checked. Tests: 3. Findings: 2.");
  expect(store.get()).toMatchObject({ error: "", work: undefined });
});

test("a finding leads to its cell, also where the table stands away from the corner", async () => {
  const title = ["Air tests", null, null, null, null];
  const { store, commands, asked } = pane([title, ...ROWS], 4, 2);
  await commands.check();
  for (const finding of store.get().checked!.result.findings) await commands.goTo(finding);
  // Title in row 5, header in row 6, foam of S-02 in G8, first reading of S-03 in D9.
  expect(asked.selected).toEqual([
    { sheetId: "s1", row: 7, column: 6 },
    { sheetId: "s1", row: 8, column: 3 },
  ]);
});

test("marks carry weight and sentence, and the spreadsheet's remarks are passed on", async () => {
  const { store, commands, asked } = pane();
  await commands.check();
  await commands.mark();
  expect(asked.marks).toEqual([
    expect.objectContaining({ row: 2, column: 4, weight: "error" }),
    expect.objectContaining({ row: 3, column: 1, weight: "error" }),
  ]);
  expect(asked.marks[0]!.sentences[0]).toMatch(/^Foam: “lots” is not a number/);
  expect(store.get().status).toBe("Marked cells: 2. With a note: 0. A remark of the spreadsheet.");
});

test("marking after nothing was found renews the checked sheet, so that earlier marks go", async () => {
  const { commands, asked } = pane(ROWS.slice(0, 2));
  await commands.check();
  await commands.mark();
  expect(asked).toMatchObject({ marks: [], markedSheet: "s1" });
});

test("after a further check it is said that the marks are older, until they are gone", async () => {
  const { store, commands } = pane();
  await commands.check();
  await commands.mark();
  await commands.checkAgain();
  expect(store.get().status).toContain(say("pane-marks-are-older"));
  await commands.unmark();
  await commands.checkAgain();
  expect(store.get().status).not.toContain(say("pane-marks-are-older"));
});

test("without a check there is nothing to mark or write", async () => {
  const { commands, asked, host } = pane();
  const write = jest.spyOn(host, "writeResultsSheet");
  await commands.mark();
  await commands.writeResultsSheet();
  expect(asked.marks).toEqual([]);
  expect(write).not.toHaveBeenCalled();
});

test("marks are taken off without a check, and the results sheet is named", async () => {
  const { store, commands } = pane();
  await commands.unmark();
  expect(store.get().status).toBe("Marks removed: 3. Notes removed: 2.");
  await commands.check();
  await commands.writeResultsSheet();
  expect(store.get().status).toBe("The results are on the sheet “Findings 2”.");
});

test("a selected column is taken for the trend, and anything wider is not", async () => {
  const { store, commands, asked } = pane(ROWS.map((row) => [row[1]!]));
  await commands.takeTrendColumn();
  expect(asked.scopes).toEqual(["selection"]);
  expect(store.get().trendColumn!.read.address).toBe("Loads!A1:A4");
  const wide = pane();
  await wide.commands.takeTrendColumn();
  expect(wide.store.get()).toMatchObject({
    trendColumn: undefined,
    error: say("trend-one-column"),
  });
});

test("selected cells are checked as they are; one selected cell means the table around it", async () => {
  const { store, commands, asked, host, whole } = pane();
  const readTable = host.read;
  host.read = async (scope) => {
    const read = await readTable(scope);
    if (scope === "table") return read;
    return { ...read, area: { ...whole(), rows: 1, columns: 1 }, values: [["Sample"]] };
  };
  await commands.checkSelection();
  expect(asked.scopes).toEqual(["selection", "table"]);
  expect(store.get().checked!.result.rows).toHaveLength(3);
});

test.each([
  ["a problem of the host", new Problem("selection-in-parts"), say("selection-in-parts")],
  ["an error that is not ours", new Error("RichApi.Error 0x80"), say("pane-unexpected")],
  ["whatever else is thrown", "raw text", say("pane-unexpected")],
])("%s becomes one sentence of ours, and the earlier check stays", async (_, thrown, sentence) => {
  const { store, commands, host } = pane();
  await commands.check();
  const before = store.get().checked;
  host.read = () => Promise.reject(thrown);
  await commands.check();
  expect(store.get()).toMatchObject({ error: sentence, status: "", work: undefined });
  expect(store.get().checked).toBe(before);
});

test.each([
  ["headers alone", [HEADER], "pane-no-tests"],
  ["headers over blank rows", [HEADER, [null, "", " ", null, null]], "pane-no-tests"],
  ["no headers", [["S-01", 6, 6, 16, 1]], "no-header-row"],
  [
    "no readings",
    [
      ["Load", "Mix", "Date", "", ""],
      ["L1", "LW", 46172, null, null],
    ],
    "no-readings-column",
  ],
] as const)("%s: a sentence says so", async (_, cells, id) => {
  const { store, commands } = pane(cells.map((row) => [...row]));
  await commands.check();
  expect(store.get().error).toBe(say(id));
});

test("limits are taken from the pane only where the sheet has none", async () => {
  const { store, commands } = pane([
    [...HEADER, "Low"],
    ...ROWS.slice(1).map((row) => [...row, 5]),
  ]);
  store.set({ low: "6.5", high: "5.5" });
  await commands.check();
  // S-01 has 6.00 %: the sheet's own low limit of 5 holds, the high one is from the pane.
  expect(store.get().checked!.result.rows[0]!.judged.limits).toEqual({ low: 5, high: 5.5 });
});

test("a limit that is not a number is said with its label", async () => {
  const { store, commands } = pane();
  store.set({ low: "four" });
  await commands.check();
  expect(store.get().error).toBe(sentenceOf("not-a-number", { value: "four" }, "Low limit, %"));
});

test("long work can be stopped, and the earlier check stays", async () => {
  const many = Array.from({ length: 20_000 }, (_, i) => [`S-${i}`, 6, 6, 16, i % 4]);
  const { store, commands } = pane([HEADER, ...many]);
  const shares: number[] = [];
  store.watch(
    ({ work }) => work?.share,
    (share) => {
      if (share === undefined) return;
      shares.push(share);
      commands.stop();
    },
  );
  await commands.check();
  expect(shares.length).toBe(1);
  expect(store.get()).toMatchObject({ checked: undefined, error: "", status: say("pane-stopped") });
});

test("a second command waits for nothing and does nothing while one is under way", async () => {
  const { commands, asked } = pane();
  const both = [commands.check(), commands.check()];
  expect(await Promise.all(both)).toEqual([true, false]);
  expect(asked.scopes).toHaveLength(1);
});

test("a check once more takes in rows that were added below", async () => {
  const cells = [...ROWS];
  const { store, commands } = pane(cells);
  await commands.check();
  cells.push(["S-04", 6, 6, 16, "some"]);
  await commands.checkAgain();
  expect(store.get().status).toBe(
    "Loads!A1:E5 is checked. Tests: 4. Findings: 3. New findings: 1. No longer found: 0.",
  );
});

test("a chart is offered only where the spreadsheet draws charts", async () => {
  const { store, host, commands } = pane();
  expect(commands.addChart).toBeUndefined();
  const drawing = paneCommands(store, { ...host, addChart: async ({ sheetName }) => sheetName });
  await drawing.addChart!({ sheetName: "Trend", title: "Air", names: [], lines: [] });
  expect(store.get().status).toBe("The chart is on the sheet “Trend”.");
});
