import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { Mark, ReadArea } from "../../../src/hosts/sheet-host";
import { Problem } from "../../../src/measure/problem";
import { say } from "../../../src/messages/pane-catalogue";
import { overlap, cellAt, rectangleFrom } from "../../excel-client/block";
import type { EmulatedExcel } from "../../excel-client/emulated-excel";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import type { SheetModel } from "../../excel-client/sheet-model";
import { deleteRows, edit, giveNote, insertRows, sortRows } from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/*
 * What happens around marking: workbooks and Excels as people have them, and what others do between two
 * requests of ours. Whatever it is, nothing of anybody else's is changed, and our marks are found and come off.
 */

const excel = startExcel();
const host = excelHost();
afterAll(untilReleased);

const TABLE = rectangleFrom("A1:B5");

/** A workbook of a user, with notes and formats of their own. */
function newWorkbook(): WorkbookModel {
  const workbook = new WorkbookModel();
  const sheet = workbook.front;
  sheet.grid = [
    ["Sample", "First reading"],
    ["L-4", 5.25],
    ["L-3", 5.5],
    ["L-2", 6],
    ["L-1", 6.25],
  ];
  sheet.notes.push({ row: 4, column: 0, content: "Ask the driver." });
  sheet.fills.push({ row: 2, column: 1, color: "#ffee00" });
  sheet.formats.push({
    id: workbook.newId(),
    type: "Custom",
    areas: [rectangleFrom("B2:B5")],
    formula: '=AND(LEN("fresh-mark-void")>0,B2>6)',
    fill: "#00aa55",
    ink: "#000000",
  });
  workbook.addSheet("Mixes");
  workbook.select(sheet, TABLE);
  return workbook;
}

const markAt = (row: number): Mark => ({
  sheetId: excel.workbook.sheet(0).id,
  row,
  column: 1,
  weight: row === 1 ? "error" : "doubt",
  sentences: [`About ${excel.workbook.sheet(0).grid[row]?.[0]}.`],
});
const marks = (): Mark[] => [markAt(1), markAt(3)];

function read(): Promise<ReadArea> {
  excel.workbook.select(excel.workbook.sheet(0), TABLE);
  return host.read("selection");
}

function ourFills(sheet: SheetModel, row: number): string[] {
  return sheet.formats
    .filter(({ formula }) => formula.startsWith("=LEN"))
    .filter(({ areas }) => areas.some((area) => overlap(area, cellAt(row, 1))))
    .map(({ fill }) => fill);
}

beforeEach(() => {
  excel.workbook = newWorkbook();
  excel.requirementSet = 20;
  excel.undoGroups = undefined;
  excel.localFormulas = false;
  excel.closed = false;
});

interface Kind {
  readonly name: string;
  readonly prepare: (workbook: WorkbookModel, excel: EmulatedExcel) => void;
  /** What is said of marking besides how much was marked. */
  readonly said?: readonly string[];
}

const KINDS: readonly Kind[] = [
  { name: "a workbook as any other", prepare: () => undefined },
  {
    name: "undo groups that are refused at once",
    prepare: (_, e) => (e.undoGroups = { code: "InvalidArgument", fromCall: 1 }),
  },
  {
    name: "undo groups in which something cannot be undone",
    prepare: (_, e) => (e.undoGroups = { code: "UndoNotSupported", fromCall: 3 }),
  },
  {
    name: "undo groups that fail with an inner error halfway",
    prepare: (_, e) => (e.undoGroups = { code: "GeneralException", fromCall: 2 }),
  },
  {
    name: "formulas in German, and a decimal comma",
    prepare: (workbook, e) => {
      e.localFormulas = true;
      workbook.decimalSeparator = ",";
    },
  },
  {
    name: "merged cells in the table",
    prepare: (workbook) => workbook.sheet(0).merges.push(rectangleFrom("A2:A3")),
  },
  {
    name: "a marked row that is filtered out",
    prepare: (workbook) => (workbook.sheet(0).filter = { block: TABLE, hiddenRows: [3] }),
    said: [say("marks-hidden", { count: 1 })],
  },
  {
    name: "the marked column hidden",
    prepare: (workbook) => workbook.sheet(0).hiddenColumns.push(1),
    said: [say("marks-hidden", { count: 2 })],
  },
  {
    name: "hidden rows between the marked ones",
    prepare: (workbook) => workbook.sheet(0).hiddenRows.push(2),
  },
  {
    name: "hidden rows on a sheet that is protected, but not against formats",
    prepare: (workbook) => {
      const sheet = workbook.sheet(0);
      sheet.hiddenRows.push(3);
      sheet.protection = { protected: true, allowFormatCells: true, allowEditObjects: true };
    },
    said: [say("marks-perhaps-hidden")],
  },
  {
    name: "an Excel table",
    prepare: (workbook) =>
      workbook.sheet(0).tables.push({
        ...{ id: workbook.newId(), name: "Loads", block: TABLE, showTotals: false },
      }),
  },
  {
    name: "an array that spills over the table",
    prepare: (workbook) =>
      workbook.sheet(0).formulas.push({ row: 1, column: 1, formula: "=SEQUENCE(4)" }),
  },
  {
    name: "a protected workbook",
    prepare: (workbook) => (workbook.structureProtected = true),
  },
];

describe.each(KINDS)("with $name", ({ prepare, said = [] }) => {
  test("marking and taking off again leaves everything as it was", async () => {
    prepare(excel.workbook, excel);
    const before = excel.workbook.snapshot();
    const checked = await read();
    for (let i = 0; i < 2; i += 1) {
      expect(await host.mark(marks(), true, [checked])).toEqual({
        cells: 2,
        notes: 2,
        remarks: said,
      });
      for (const row of [1, 3]) expect(ourFills(excel.workbook.sheet(0), row)).toHaveLength(1);
    }
    expect(await host.unmark()).toMatchObject({ cells: 2, notes: 2, remarks: [] });
    expect(excel.workbook.snapshot()).toEqual(before);
  });
});

test("a sheet that is protected against notes keeps ours, and a sentence says so", async () => {
  const before = excel.workbook.snapshot();
  await host.mark(marks(), true, [await read()]);
  const sheet = excel.workbook.sheet(0);
  const { protection } = sheet;
  sheet.protection = { protected: true, allowFormatCells: true, allowEditObjects: false };
  const left = say("notes-left-on-protected-sheet", { sheet: "Loads" });
  expect(await host.mark([], false, [await read()])).toMatchObject({ remarks: [left] });
  expect(await host.unmark()).toEqual({ cells: 0, notes: 0, remarks: [left] });
  sheet.protection = protection;
  expect(await host.unmark()).toMatchObject({ notes: 2, remarks: [] });
  expect(excel.workbook.snapshot()).toEqual(before);
});

test("a sheet whose writing failed is taken away outside of any undo group", async () => {
  const names = excel.workbook.sheets.map(({ name }) => name);
  excel.failCall(3, "GeneralException");
  await expect(host.writeResultsSheet("Findings", [["Sample"]])).rejects.toEqual(
    new Problem("host-failed"),
  );
  expect(excel.workbook.sheets.map(({ name }) => name)).toEqual(names);
});

/** What somebody else does, on the workbook with our marks and on one without us. */
interface Doing {
  readonly name: string;
  readonly act: (sheet: SheetModel) => void;
  /** Whether marks that are put on after it would stand on other tests, or on none. */
  readonly changes: boolean;
}

const sorted = (sheet: SheetModel): void => void sortRows(sheet, rectangleFrom("A2:B5"), 0);
const DOINGS: readonly Doing[] = [
  { name: "sorts the table", act: sorted, changes: true },
  { name: "inserts a row above the tests", act: (sheet) => insertRows(sheet, 1, 1), changes: true },
  { name: "deletes a test", act: (sheet) => deleteRows(sheet, 1, 1), changes: true },
  { name: "edits a marked test", act: (sheet) => edit(sheet, 3, 1, 9), changes: true },
  {
    name: "writes a note where one of ours goes",
    act: (sheet) => giveNote(sheet, 3, 1, "Written just now."),
    changes: false,
  },
  { name: "takes away all notes", act: (sheet) => void (sheet.notes = []), changes: false },
];

/** So many requests at most does marking or taking off make. */
const MOST_CALLS = 6;

describe.each(DOINGS)("somebody who $name between two requests", ({ act, changes }) => {
  test.each(Array.from({ length: MOST_CALLS }, (_, i) => i + 1))(
    "of marking (before the %ith) loses nothing, and no mark stands on another test",
    async (call) => {
      const twin = newWorkbook();
      const checked = await read();
      let tooLate = false;
      excel.interrupt(call, () => {
        const sheet = excel.workbook.sheet(0);
        tooLate = ourFills(sheet, 1).length > 0;
        act(sheet);
      });
      const marked = await host.mark(marks(), true, [checked]).then(
        () => true,
        (error: unknown) => {
          expect(error).toEqual(new Problem("table-changed"));
          return false;
        },
      );
      const came = excel.takeBackInterruptions() === 0;
      if (came) act(twin.sheet(0));
      if (came && changes && !tooLate) expect(marked).toBe(false);
      const { formats } = excel.workbook.sheet(0);
      if (!marked) expect(formats).toHaveLength(twin.sheet(0).formats.length);
      await host.unmark();
      expect(excel.workbook.snapshot()).toEqual(twin.snapshot());
    },
  );

  test.each(Array.from({ length: MOST_CALLS }, (_, i) => i + 1))(
    "of taking marks off (before the %ith) loses nothing",
    async (call) => {
      const twin = newWorkbook();
      await host.mark(marks(), true, [await read()]);
      excel.interrupt(call, () => act(excel.workbook.sheet(0)));
      await host.unmark();
      if (excel.takeBackInterruptions() === 0) act(twin.sheet(0));
      // What was written after the last request is of no concern to it.
      expect(excel.workbook.snapshot()).toEqual(twin.snapshot());
      expect(await host.unmark()).toEqual({ cells: 0, notes: 0, remarks: [] });
    },
  );
});

test.each([1, 2, 3, 4])(
  "a note of ours that is edited right before the %ith request of taking off is kept as it was written",
  async (call) => {
    await host.mark(marks(), true, [await read()]);
    const sheet = excel.workbook.sheet(0);
    excel.interrupt(call, () => {
      const note = sheet.notes.find(({ row }) => row === 3)!;
      note.content = note.content.replace("About", "Nothing about");
    });
    await host.unmark();
    if (excel.takeBackInterruptions() > 0) return;
    expect(sheet.notes.find(({ row }) => row === 3)?.content).toMatch(/^Nothing about L-2\.\n/);
    expect(sheet.notes).toHaveLength(2);
  },
);

describe.each([{ notes: true }, { notes: false }])(
  "two panes that mark at once, with notes: $notes,",
  ({ notes }) => {
    test.each([1, 2, 3, 4, 5, 6])(
      "leave each cell marked once where the other comes before the %ith request",
      async (call) => {
        const before = excel.workbook.snapshot();
        await host.mark(marks(), notes, [await read()]);
        const theirs = structuredClone(excel.workbook.sheet(0));
        excel.workbook = newWorkbook();
        const checked = await read();
        excel.interrupt(call, () => {
          const { formats, notes: taken } = excel.workbook.sheet(0);
          const ofTheOther = theirs.formats.filter(({ formula }) => formula.startsWith("=LEN"));
          formats.unshift(...ofTheOther.map((one) => ({ ...one, id: excel.workbook.newId() })));
          const free = theirs.notes.filter(
            ({ row, column }) => !taken.some((one) => one.row === row && one.column === column),
          );
          taken.push(...free);
        });
        await host.mark(marks(), notes, [checked]);
        if (excel.takeBackInterruptions() > 0) return;
        for (const row of [1, 3]) expect(ourFills(excel.workbook.sheet(0), row)).toHaveLength(1);
        expect(excel.workbook.sheet(0).notes).toHaveLength(notes ? 3 : 1);
        await host.unmark();
        expect(excel.workbook.snapshot()).toEqual(before);
      },
    );
  },
);

test.each([1, 2, 3, 4])(
  "a sheet that is deleted right before the %ith request of marking is said to be gone",
  async (call) => {
    const checked = await read();
    excel.interrupt(call, () => excel.workbook.sheets.splice(0, 1));
    const marking = host.mark(marks(), true, [checked]);
    const outcome = await marking.catch((error: unknown) => error);
    if (excel.takeBackInterruptions() === 0) expect(outcome).toEqual(new Problem("sheet-gone"));
    expect(await host.unmark()).toMatchObject({ remarks: [] });
  },
);

test.each([1, 2, 3, 4, 5])(
  "a pane that is closed right before the %ith request of marking leaves marks that come off later",
  async (call) => {
    const before = excel.workbook.snapshot();
    const checked = await read();
    excel.interrupt(call, () => (excel.closed = true));
    const ended = await Promise.race([
      host.mark(marks(), true, [checked]).then(() => "marked"),
      new Promise((resolve) => setTimeout(() => resolve("never"), 30)),
    ]);
    if (excel.takeBackInterruptions() === 0) expect(ended).toBe("never");
    excel.closed = false;
    await excelHost().unmark();
    expect(excel.workbook.snapshot()).toEqual(before);
  },
);
