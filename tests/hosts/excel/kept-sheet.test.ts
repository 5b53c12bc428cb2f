import { excelHost } from "../../../src/hosts/excel/excel-host";
import { Problem } from "../../../src/measure/problem";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { readSetup } from "../../../src/reading/setup/setup";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import { heldAt, type SheetModel } from "../../excel-client/sheet-model";
import { WorkbookModel } from "../../excel-client/workbook-model";

/* The sheet of the setup on the Excel host, and what people and other panes do to it between two clicks. */

const NAME = "Fresh setup";
const TESTS = [
  ["Sample", "Mix", "First reading", "Second reading", "Spirit"],
  ["S-1", "LW-4", 6, 6.25, 48],
];
const SPIRIT = { header: "Spirit", field: "alcohol", unit: "oz" } as const;
const TABLE = [
  ["Header", "Taken for", "Unit"],
  ["R 1", "first reading", ""],
  ["5/8", "third reading", ""],
];

const excel = startExcel();
afterAll(untilReleased);
beforeEach(() => {
  excel.workbook = new WorkbookModel();
  excel.workbook.front.grid = TESTS.map((row) => [...row]);
  excel.workbook.select(excel.workbook.front, { top: 0, left: 0, bottom: 1, right: 4 });
});

function pane() {
  const store = createPaneStore();
  return { store, commands: paneCommands(store, excelHost()) };
}

const setupSheet = (): SheetModel => excel.workbook.sheets.find(({ name }) => name === NAME)!;

test("cells that were changed meanwhile are put back as they were, formulas and texts alike", async () => {
  const host = excelHost();
  await host.addSheet(NAME, TABLE);
  const read = (await host.readSheet(NAME))!;
  const sheet = setupSheet();
  sheet.grid[1] = ["R 1", "second reading", ""];
  sheet.grid[2] = ["5/8", "calculated", ""];
  sheet.formulas.push({ row: 2, column: 1, formula: "=B2" });
  const late = host.writeCells(read, [
    {
      row: 1,
      column: 0,
      values: [
        ["a", "b"],
        ["c", "d"],
      ],
    },
  ]);
  await expect(late).rejects.toEqual(new Problem("changed-meanwhile"));
  expect(sheet.grid.slice(1, 3).map((row) => row!.slice(0, 2))).toEqual([
    ["R 1", "second reading"],
    ["5/8", "calculated"],
  ]);
  expect(sheet.formulas).toEqual([{ row: 2, column: 1, formula: "=B2" }]);
});

test("a workbook that counts from 1904 tells so, and its dates are read so", async () => {
  excel.workbook.datesFrom = 1904;
  // 2026-06-09 is day 44720 there and 46182 counted from 1900.
  excel.workbook.front.grid = [
    [...TESTS[0]!.slice(0, 4), "Date"],
    ["S-1", "LW-4", 6, 6, 44720],
  ];
  const { store, commands } = pane();
  await commands.checkSelection();
  expect(store.get().checked!.result.results[0]!.values.date).toBe(46182);
  await commands.choose({ header: "Sample", field: "load" });
  await commands.keepSetup();
  expect(readSetup(setupSheet().grid as string[][])).toMatchObject({ datesFrom: 1904, issues: [] });
});

test("a setup is kept on a hidden sheet as well, and no text becomes a formula or a date", async () => {
  const { store, commands } = pane();
  await commands.checkSelection();
  await commands.choose(SPIRIT);
  await commands.keepSetup();
  setupSheet().visibility = "Hidden";
  await commands.choose({ header: "Mix", field: "not ours" });
  await commands.keepSetup();
  expect(store.get().error).toBe("");
  expect(readSetup(setupSheet().grid as string[][]).columns).toEqual([
    SPIRIT,
    { header: "Mix", field: "not ours" },
  ]);
  expect(excel.workbook.sheets).toHaveLength(2);
});

test("renamed between two clicks it is not applied, that is said, and no second one is made", async () => {
  const { store, commands } = pane();
  await commands.checkSelection();
  await commands.choose(SPIRIT);
  await commands.keepSetup();
  setupSheet().name = "Setup of the lab";
  await commands.choose({ header: "Mix", field: "not ours" });
  await commands.keepSetup();
  expect(store.get().error).toMatch(/is named “Setup of the lab” now/);
  await commands.checkSelection();
  expect(store.get().status).toMatch(/is named “Setup of the lab” now/);
  expect(excel.workbook.sheets.map(({ name }) => name)).not.toContain(NAME);
  excel.workbook.sheets[1]!.name = NAME;
  await commands.keepSetup();
  expect(readSetup(setupSheet().grid as string[][]).columns).toHaveLength(2);
});

test("sorted between two clicks, each line is found by its header", async () => {
  const { commands } = pane();
  await commands.checkSelection();
  await commands.choose(SPIRIT);
  await commands.choose({ header: "Mix", field: "not ours" });
  await commands.keepSetup();
  const { grid } = setupSheet();
  const [spirit, mix] = [grid[2]!, grid[3]!];
  const swap = (one: typeof spirit, other: typeof mix) => [...other.slice(0, 3), ...one.slice(3)];
  [grid[2], grid[3]] = [swap(spirit, mix), swap(mix, spirit)];
  await commands.choose({ ...SPIRIT, unit: "pt" });
  await commands.keepSetup();
  expect(readSetup(setupSheet().grid as string[][]).columns).toEqual([
    { header: "Mix", field: "not ours" },
    { ...SPIRIT, unit: "pt" },
  ]);
});

test.each([
  ["workbook", () => (excel.workbook.structureProtected = true), false],
  ["sheet", () => (setupSheet().protection.protected = true), true],
])(
  "a protected %s is said, nothing is written, and the choice stays",
  async (_, protect, isKept) => {
    const { store, commands } = pane();
    await commands.checkSelection();
    if (isKept) {
      await commands.choose({ header: "Mix", field: "not ours" });
      await commands.keepSetup();
    }
    const before = structuredClone(excel.workbook.sheets);
    protect();
    await commands.choose(SPIRIT);
    await commands.keepSetup();
    expect(store.get().error).toMatch(/protected/);
    expect(store.get().choices.size).toBe(1);
    expect(excel.workbook.sheets.map(({ grid }) => grid)).toEqual(before.map(({ grid }) => grid));
  },
);

test("two panes that keep at once make one sheet, and the second says so and can do it again", async () => {
  const [one, two] = [pane(), pane()];
  for (const { commands } of [one, two]) await commands.checkSelection();
  await one.commands.choose(SPIRIT);
  await two.commands.choose({ header: "Mix", field: "not ours" });
  await Promise.all([one.commands.keepSetup(), two.commands.keepSetup()]);
  const errors = [one, two].map(({ store }) => store.get().error).filter((error) => error !== "");
  expect(excel.workbook.sheets.filter(({ name }) => name === NAME)).toHaveLength(1);
  for (const error of errors) expect(error).toMatch(/at the same time/);
  await one.commands.keepSetup();
  await two.commands.keepSetup();
  const { columns } = readSetup(setupSheet().grid as string[][]);
  expect(new Set(columns.map(({ header }) => header))).toEqual(new Set(["Spirit", "Mix"]));
});

test("an edit of the setup sheet is followed by the live check", async () => {
  const { store, commands } = pane();
  await commands.checkSelection();
  await commands.choose(SPIRIT);
  await commands.keepSetup();
  const { followEdits } = await import("../../../src/pane/state/listening");
  followEdits(store, excelHost(), commands);
  store.set({ live: true });
  await later(30);
  const sheet = setupSheet();
  expect(heldAt(sheet, 2, 2)).toBe("oz");
  sheet.grid[2] = ["Spirit", "not ours", "", ...sheet.grid[2]!.slice(3)];
  excel.userChanged(sheet, "RangeEdited");
  await later(500);
  expect(store.get().checked!.result.columns.alcohol).toBeUndefined();
  store.set({ live: false });
  await later(20);
});

function later(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
