import fc from "fast-check";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import { say } from "../../../src/messages/pane-catalogue";
import { paneCommands, type PaneCommands } from "../../../src/pane/state/commands";
import { cursorFollower, followEdits } from "../../../src/pane/state/listening";
import { createPaneStore, type PaneStore } from "../../../src/pane/state/pane-state";
import { WHOLE_SHEET, type Rectangle } from "../../excel-client/block";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import { filledBlock, type Held, type SheetModel } from "../../excel-client/sheet-model";
import {
  copyCells,
  deleteRows,
  edit,
  insertColumns,
  insertRows,
  sortRows,
} from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/*
 * The pane on the Excel host: what its live check asks of Excel, that it finds what a full check finds, and that a long
 * reading can be stopped.
 */

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Reported air"];
const ROWS = 8;

const excel = startExcel();
afterAll(untilReleased);
let sheet: SheetModel;
let store: PaneStore;
let commands: PaneCommands;

async function openPane(): Promise<void> {
  excel.workbook = new WorkbookModel();
  sheet = excel.workbook.front;
  sheet.grid = [HEADERS, ...Array.from({ length: ROWS }, (_, i) => [`L-${i}`, 5, 5, 32, 5])];
  excel.workbook.select(sheet, { top: 0, left: 0, bottom: ROWS, right: 4 });
  ({ store, commands } = paneOn());
  await commands.checkSelection();
}

function paneOn(): { store: PaneStore; commands: PaneCommands } {
  const opened = createPaneStore();
  opened.set({ low: "4.5", high: "7.5" });
  const host = excelHost();
  const ready = { store: opened, commands: paneCommands(opened, host) };
  followEdits(opened, host, ready.commands);
  return ready;
}

/** What a check of the table as it stands now, from scratch, finds. */
async function findingsOfFullCheck(): Promise<unknown> {
  const fresh = paneOn();
  excel.workbook.select(sheet, table());
  await fresh.commands.checkSelection();
  return shown(fresh.store);
}

function shown(of: PaneStore): unknown {
  const { checked, error } = of.get();
  return error === "" ? { area: checked?.read.area, findings: checked?.result.findings } : error;
}

describe("a burst of edits", () => {
  beforeEach(async () => {
    await openPane();
    store.set({ live: true });
    await later(50);
    excel.startCounting();
  });
  afterEach(async () => {
    store.set({ live: false });
    await later(20);
  });

  test("is followed within half a second of its last edit, at no more than three syncs", async () => {
    for (let i = 0; i < 20; i += 1) {
      edit(sheet, 3, 1, 5 + i / 4);
      excel.userChanged(sheet, "RangeEdited");
      await later(10);
    }
    await later(500);
    expect(excel.traffic.calls).toBeGreaterThan(0);
    // Two for the table, one to see whether the workbook holds a review.
    expect(excel.traffic.calls).toBeLessThanOrEqual(3);
    expect(shown(store)).toEqual(await findingsOfFullCheck());
  });

  test("on another sheet costs nothing", async () => {
    excel.userChanged(excel.workbook.addSheet("Mixes"), "RangeEdited");
    await later(500);
    expect(excel.traffic.calls).toBe(0);
  });

  test("is never one of our own marks", async () => {
    edit(sheet, 2, 1, 9);
    await commands.checkAgain();
    await commands.mark();
    await commands.unmark();
    const { calls } = excel.traffic;
    await later(500);
    expect(excel.traffic.calls).toBe(calls);
  });
});

describe("the live check follows the table", () => {
  const area = () => store.get().checked!.read.area;
  beforeEach(async () => {
    await openPane();
    store.set({ live: true });
    await later(20);
  });
  afterEach(async () => {
    store.set({ live: false });
    await later(20);
  });

  test("with 500 rows pasted below it", async () => {
    for (let i = 0; i < 500; i += 1) sheet.grid[ROWS + 1 + i] = [`P-${i}`, 5, 5, 32, 5];
    excel.userChanged(sheet, "RangeEdited", `A${ROWS + 2}:E${ROWS + 501}`);
    for (let waited = 0; waited < 3000 && area().rows === 1 + ROWS; waited += 50) await later(50);
    expect(area().rows).toBe(1 + ROWS + 500);
    expect(store.get().checked!.result.results).toHaveLength(ROWS + 500);
  });

  test("with a column inserted at its left edge, whether Excel tells of it or not", async () => {
    for (const tell of [true, false]) {
      insertColumns(sheet, 0, 1);
      if (tell) excel.userChanged(sheet, "ColumnInserted", "A:A");
      else excel.userChanged(sheet, "RangeEdited");
      await later(500);
      expect(area()).toMatchObject({ column: tell ? 1 : 2, columns: 5 });
    }
  });

  test("of Excel as far as the table goes by now, without its row of totals", async () => {
    const block = { top: 0, left: 0, bottom: ROWS, right: 4 };
    sheet.tables.push({ id: "t", name: "Loads", block, showTotals: false });
    excel.workbook.select(sheet, { ...block, bottom: 0, right: 0 });
    await commands.check();
    for (let i = 0; i < 3; i += 1) sheet.grid[ROWS + 1 + i] = [`P-${i}`, 5, 5, 32, 5];
    sheet.grid[ROWS + 4] = ["", 5, 5, "", ""];
    sheet.tables[0]!.block = { ...block, bottom: ROWS + 4 };
    sheet.tables[0]!.showTotals = true;
    excel.userChanged(sheet, "RangeEdited");
    await later(500);
    expect(area().rows).toBe(1 + ROWS + 3);
  });

  test("and says so where the table is not there any more", async () => {
    sheet.grid = [];
    excel.userChanged(sheet, "RangeEdited");
    await later(500);
    expect(store.get().error).not.toBe("");
  });
});

test("a row under the cursor that holds another test by now is said, not shown as that test", async () => {
  await openPane();
  const follow = cursorFollower(store, excelHost());
  follow(true);
  await later(50);
  const goTo = async (at: number) => {
    excel.userSelects(sheet, { top: at, left: 1, bottom: at, right: 1 });
    await later(50);
    return store.get().cursor?.row;
  };
  expect(await goTo(3)).toBe(3);
  deleteRows(sheet, 2, 1);
  expect(await goTo(4)).toBeUndefined();
  expect(store.get().status).toBe(say("pane-row-changed", { row: 5 }));
  expect(await goTo(1)).toBe(1);
  follow(false);
  await later(20);
});

const row = fc.integer({ min: 1, max: ROWS });
const count = fc.integer({ min: 1, max: 3 });
const entry: fc.Arbitrary<Held> = fc.constantFrom(5, 5.25, 5.3, 9.5, "", "5.25", "text", -1, true);

/** Does something to the table and has Excel tell of it. */
type TableEdit = () => void;

const tableEdit: fc.Arbitrary<TableEdit> = fc.oneof(
  fc.tuple(row, fc.integer({ min: 1, max: 4 }), entry).map(([down, column, held]) => () => {
    edit(sheet, table().top + down, column, held);
    excel.userChanged(sheet, "RangeEdited");
  }),
  fc.tuple(row, count).map(([down, rows]) => () => {
    // Rows put in below the last one are no part of the table.
    const at = Math.min(table().top + down, table().bottom);
    insertRows(sheet, at, rows);
    excel.userChanged(sheet, "RowInserted", `${at + 1}:${at + rows}`);
  }),
  fc.tuple(row, count).map(([down, rows]) => () => {
    const at = table().top + down;
    deleteRows(sheet, at, rows);
    excel.userChanged(sheet, "RowDeleted", `${at + 1}:${at + rows}`);
  }),
  fc.constant(() => {
    insertRows(sheet, 0, 1);
    excel.userChanged(sheet, "RowInserted", "1:1");
  }),
  fc.integer({ min: 0, max: 4 }).map((by) => () => {
    sortRows(sheet, { ...table(), top: table().top + 1 }, by);
    excel.userSorted(sheet, table());
  }),
  // Pasted rows stand in the table or directly below it.
  fc.tuple(row, row).map(([from, to]) => () => {
    const top = table().top + from;
    const down = Math.min(table().top + to, table().bottom + 1) - top;
    copyCells(sheet, { ...table(), top, bottom: top }, down, 0);
    excel.userChanged(sheet, "RangeEdited");
  }),
);

/** Where the table stands now; the sheet holds nothing else. */
function table(): Rectangle {
  return filledBlock(sheet, WHOLE_SHEET) ?? WHOLE_SHEET;
}

test("200 random edit scripts end with the findings of a full check", async () => {
  let found = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(tableEdit, { minLength: 1, maxLength: 5 }), async (script) => {
      await openPane();
      store.set({ live: true });
      await later(0);
      for (const act of script) act();
      await later(0);
      await commands.checkAgain();
      found += store.get().checked?.result.findings.length ?? 0;
      expect(shown(store)).toEqual(await findingsOfFullCheck());
      store.set({ live: false });
    }),
    { numRuns: 200, seed: 173 },
  );
  // The scripts do make mistakes for the check to find.
  expect(found).toBeGreaterThan(80);
}, 60_000);

test("a long reading ends where the user stops it", async () => {
  await openPane();
  sheet.grid = [HEADERS, ...Array.from({ length: 200_000 }, () => ["L-1", 5, 5, 32, 5])];
  excel.workbook.select(sheet, table());
  excel.startCounting();
  const checking = commands.checkSelection();
  store.watch(
    ({ work }) => work?.label,
    () => excel.traffic.calls === 2 && commands.stop(),
  );
  await checking;
  expect(store.get().status).toBe(say("pane-stopped"));
  // Where the table is, its first rows, and one piece more that was on its way.
  expect(excel.traffic.calls).toBe(3);
}, 30_000);

function later(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
