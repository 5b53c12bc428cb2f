import fc from "fast-check";
import type { Rectangle } from "../../excel-client/block";
import type { EmulatedExcel } from "../../excel-client/emulated-excel";
import type { Held, NoteModel, SheetModel } from "../../excel-client/sheet-model";
import {
  copyCells,
  copySheet,
  deleteColumns,
  deleteRows,
  edit,
  giveNote,
  insertColumns,
  insertRows,
  sortRows,
} from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/*
 * A user and our pane at work on one workbook, and the same user on a twin of it that we are never in. What the
 * user writes into a note of ours is, on the twin, a note of its own; a note of ours that the user changes is the
 * user's from then on, on both.
 */

export const HEADERS = [...["Sample", "First reading", "Second reading", "Alcohol (oz)", "Foam"]];
const COLUMNS = HEADERS.length;

/** Both workbooks, and the pane on the first. */
export class Pair {
  twin: WorkbookModel;
  private readonly earlier: { readonly real: WorkbookModel; readonly twin: WorkbookModel }[] = [];

  constructor(readonly excel: EmulatedExcel) {
    this.twin = copyOf(excel.workbook);
  }

  get sheet(): SheetModel {
    return this.excel.workbook.sheet(0);
  }

  /** Remembers how both are, for Undo. */
  remember(): void {
    this.earlier.push({ real: copyOf(this.excel.workbook), twin: copyOf(this.twin) });
  }

  /** Undo takes back the last step, whether it was the user's or ours. */
  undo(): void {
    const last = this.earlier.pop();
    if (!last) return;
    this.excel.workbook = last.real;
    this.twin = last.twin;
  }

  /** Does the same to both. */
  both(act: (sheet: SheetModel, workbook: WorkbookModel) => void): void {
    act(this.sheet, this.excel.workbook);
    act(this.twin.sheet(0), this.twin);
  }
}

/** Something that happens. */
export type Act = (pair: Pair) => void;

function copyOf(workbook: WorkbookModel): WorkbookModel {
  return Object.assign(new WorkbookModel(), structuredClone({ ...workbook }));
}

const row = fc.integer({ min: 0, max: 7 });
const testRow = fc.integer({ min: 1, max: 6 });
const column = fc.nat(COLUMNS - 1);
const count = fc.integer({ min: 1, max: 2 });
const held: fc.Arbitrary<Held> = fc.constantFrom<Held>(5, 5.25, 6, 12, "", "5.25", "six", -1, true);
const line = fc.constantFrom("Ask the driver.", "Ana:", "see\nbelow", "Look at it.");

const userEdit: fc.Arbitrary<Act> = fc.oneof(
  fc.tuple(row, column, held).map(([r, c, value]): Act => (pair) => {
    pair.both((sheet) => edit(sheet, r, c, value));
    pair.excel.userChanged(pair.sheet, "RangeEdited");
  }),
  fc.tuple(row, count).map(([at, rows]): Act => (pair) => {
    pair.both((sheet) => insertRows(sheet, at, rows));
    pair.excel.userChanged(pair.sheet, "RowInserted", `${at + 1}:${at + rows}`);
  }),
  fc.tuple(row, count).map(([at, rows]): Act => (pair) => {
    pair.both((sheet) => deleteRows(sheet, at, rows));
    pair.excel.userChanged(pair.sheet, "RowDeleted", `${at + 1}:${at + rows}`);
  }),
  column.map((at): Act => (pair) => {
    pair.both((sheet) => insertColumns(sheet, at, 1));
    const letter = String.fromCharCode(65 + at);
    pair.excel.userChanged(pair.sheet, "ColumnInserted", `${letter}:${letter}`);
  }),
  column.map((at): Act => (pair) => {
    pair.both((sheet) => deleteColumns(sheet, at, 1));
    const letter = String.fromCharCode(65 + at);
    pair.excel.userChanged(pair.sheet, "ColumnDeleted", `${letter}:${letter}`);
  }),
  fc.tuple(testRow, column).map(([top, by]): Act => (pair) => {
    const block: Rectangle = { top, left: 0, bottom: 7, right: COLUMNS };
    pair.both((sheet) => sortRows(sheet, block, by));
    pair.excel.userSorted(pair.sheet, block);
  }),
  fc
    .tuple(row, row, column, column, count, count)
    .map(([from, to, left, right, rows, columns]): Act => (pair) => {
      const block = { top: from, left, bottom: from + rows - 1, right: left + columns - 1 };
      pair.both((sheet) => copyCells(sheet, block, Math.max(to - from, -from), right - left));
      pair.excel.userChanged(pair.sheet, "RangeEdited");
    }),
);

const userAround: fc.Arbitrary<Act> = fc.oneof(
  fc.tuple(row, column, line).map(([r, c, text]): Act => (pair) => {
    // Whatever stood in the cell's note is replaced by the user's own.
    pair.both((sheet) => giveNote(sheet, r, c, text));
  }),
  fc.constant<Act>((pair) => pair.both((sheet, workbook) => void copySheet(workbook, sheet))),
  fc.constantFrom("Tests", "Day 2").map((name): Act => (pair) => {
    pair.both((sheet) => (sheet.name = name));
  }),
  fc.tuple(testRow, fc.boolean()).map(([r, hide]): Act => (pair) => {
    pair.both((sheet) => (sheet.hiddenRows = hide ? [r] : []));
  }),
);

/** How a user edits a note of ours: what it becomes, and what of it is the user's on the twin. */
export type NoteEdit = (content: string, own: string | undefined) => [now: string, own: string];

export const noteEdit: fc.Arbitrary<NoteEdit> = fc.oneof(
  line.map((text): NoteEdit => (content, own) => [
    `${text}\n${content}`,
    own === undefined ? text : `${text}\n${own}`,
  ]),
  line.map((text): NoteEdit => (content, own) => [
    `${content}\n${text}`,
    own === undefined ? text : `${own}\n${text}`,
  ]),
  // Typed inside our lines, or over one of them: by that the whole note is the user's.
  fc
    .constantFrom<(content: string) => string>(
      (content) => content.replace("FRESH (", "FRESH  ("),
      (content) => content.replace(/\n(Checked with FRESH )/, " Not so.\n$1"),
      (content) => content.replace(/[^\n]*\n(Checked with FRESH )/, "All is well.\n$1"),
      (content) => content.replace(/\n(Checked with FRESH )/, "$1"),
    )
    .map((change): NoteEdit => (content) => [change(content), change(content)]),
);

const editsOurNote: fc.Arbitrary<Act> = fc
  .tuple(fc.nat(5), noteEdit)
  .map(([which, change]): Act => (pair) => {
    const ownOf = ({ row: r, column: c }: NoteModel) =>
      pair.twin.sheet(0).notes.find((note) => note.row === r && note.column === c);
    const ours = pair.sheet.notes.filter((note) => ownOf(note)?.content !== note.content);
    const note = ours[which % Math.max(1, ours.length)];
    if (!note) return;
    const [now, own] = change(note.content, ownOf(note)?.content);
    note.content = now;
    giveNote(pair.twin.sheet(0), note.row, note.column, own);
  });

/** Something a user does. */
export const userAct: fc.Arbitrary<Act> = fc.oneof(
  { weight: 5, arbitrary: userEdit },
  { weight: 2, arbitrary: userAround },
  { weight: 3, arbitrary: editsOurNote },
);

/** What is between two requests of ours; nothing that another pane or Undo would do. */
export const meanwhile: fc.Arbitrary<Act> = fc.oneof(userEdit, userAround, editsOurNote);

/** The rows of a table with its headers. */
export const table: fc.Arbitrary<Held[][]> = fc
  .array(fc.tuple(held, held, fc.constantFrom<Held>(16, 32, "", 12), held), {
    minLength: 2,
    maxLength: 5,
  })
  .map((rows) => [HEADERS, ...rows.map((cells, i): Held[] => [`L-${i}`, ...cells])]);
