import fc from "fast-check";
import { WEIGHTS } from "../../../src/fieldsheet/finding";
import type { Mark } from "../../../src/hosts/sheet-host";
import { cellAt, overlap, type Rectangle } from "../../excel-client/block";
import type { Held, SheetModel } from "../../excel-client/sheet-model";
import {
  copyCells,
  copySheet,
  deleteRows,
  edit,
  giveNote,
  insertRows,
  sortRows,
} from "../../excel-client/user-edits";
import type { WorkbookModel } from "../../excel-client/workbook-model";

/* Sheets as users make them, marks on them, and what users do between marking and taking marks off. */

const ROWS = 9;
const COLUMNS = 6;

const row = fc.nat(ROWS - 1);
const column = fc.nat(COLUMNS - 1);
const block: fc.Arbitrary<Rectangle> = fc
  .tuple(row, column, fc.nat(3), fc.nat(2))
  .map(([top, left, down, right]) => ({ top, left, bottom: top + down, right: left + right }));
const held: fc.Arbitrary<Held> = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: 0, max: 40 }).map((quarters) => quarters / 4) },
  fc.constantFrom("", "5.25", "L-7", "#N/A", "void"),
  fc.boolean(),
);
const colour = fc.constantFrom("#ffee00", "#00aa55", "#e59a78");
const text = fc.constantFrom("Ask the driver.", "Checked with care", "see\nbelow", "FRESH");

const format = fc.record({
  type: fc.constantFrom("Custom", "CellValue", "ColorScale", "DataBar"),
  areas: fc.array(block, { minLength: 1, maxLength: 3 }),
  formula: fc.constantFrom("=A1>5", '=LEN("fresh")>0', "=duplicated"),
  fill: colour,
});

const protection = fc.record({
  protected: fc.boolean(),
  allowFormatCells: fc.boolean(),
  allowEditObjects: fc.boolean(),
});

/** What a user has put on a sheet. */
const sheetContent = fc.record({
  grid: fc.array(fc.array(held, { maxLength: COLUMNS }), { maxLength: ROWS }),
  fills: fc.array(fc.record({ row, column, color: colour }), { maxLength: 4 }),
  formats: fc.array(format, { maxLength: 3 }),
  notes: fc.array(fc.record({ row, column, content: text }), { maxLength: 3 }),
  comments: fc.array(fc.record({ row, column, content: text }), { maxLength: 2 }),
  validations: fc.array(fc.record({ block, rule: fc.constantFrom("0 to 9", "a list") }), {
    maxLength: 2,
  }),
  merges: fc.array(block, { maxLength: 2 }),
  filter: fc.option(fc.record({ block, hiddenRows: fc.array(row, { maxLength: 3 }) }), {
    nil: undefined,
  }),
  protection: fc.option(protection, { nil: undefined, freq: 3 }),
});
export type SheetContent = typeof sheetContent extends fc.Arbitrary<infer T> ? T : never;

const mark = fc.record({
  row,
  column,
  weight: fc.constantFrom(...WEIGHTS),
  sentences: fc.array(fc.constantFrom("Look at it.", "A second\nline."), { maxLength: 2 }),
});
export type MarkContent = typeof mark extends fc.Arbitrary<infer T> ? T : never;

/** Something that a user does. */
export type UserAct = (workbook: WorkbookModel, sheet: SheetModel) => void;

const userAct: fc.Arbitrary<UserAct> = fc.oneof(
  fc.tuple(row, column, held).map(
    ([r, c, value]): UserAct =>
      (_, sheet) =>
        edit(sheet, r, c, value),
  ),
  fc.tuple(row, fc.integer({ min: 1, max: 3 })).map(
    ([at, count]): UserAct =>
      (_, sheet) =>
        insertRows(sheet, at, count),
  ),
  fc.tuple(row, fc.integer({ min: 1, max: 3 })).map(
    ([at, count]): UserAct =>
      (_, sheet) =>
        deleteRows(sheet, at, count),
  ),
  fc.tuple(block, column).map(([rows, by]): UserAct => (_, sheet) => {
    sortRows(sheet, { ...rows, left: 0, right: COLUMNS - 1 }, by);
  }),
  fc.tuple(block, fc.nat(4), fc.nat(3)).map(
    ([from, down, right]): UserAct =>
      (_, sheet) =>
        copyCells(sheet, from, down, right),
  ),
  fc.constant<UserAct>((workbook, sheet) => {
    copySheet(workbook, sheet);
  }),
);

/** A sheet, marks for it, and what the user does before the marks are taken off. */
export const randomCase = fc.record({
  content: sheetContent,
  marks: fc.array(mark, { minLength: 1, maxLength: 8 }),
  acts: fc.array(userAct, { maxLength: 4 }),
  withNotes: fc.boolean(),
});

/** Puts on a sheet what a user could have put there: one note a cell, none inside merged cells. */
export function fillSheet(workbook: WorkbookModel, sheet: SheetModel, content: SheetContent): void {
  const merges = content.merges.filter(
    (merge, i) => !content.merges.slice(0, i).some((before) => overlap(before, merge)),
  );
  const inside = (r: number, c: number): boolean =>
    merges.some((merge) => overlap(merge, cellAt(r, c)) && (merge.top !== r || merge.left !== c));
  Object.assign(
    sheet,
    structuredClone({ ...content, merges, formats: [], notes: [], comments: [] }),
  );
  sheet.protection = content.protection ?? {
    protected: false,
    allowFormatCells: false,
    allowEditObjects: false,
  };
  for (const one of content.formats) {
    sheet.formats.push({ ...structuredClone(one), id: workbook.newId(), ink: "#000000" });
  }
  for (const note of content.notes) {
    if (!inside(note.row, note.column)) giveNote(sheet, note.row, note.column, note.content);
  }
  for (const comment of content.comments) {
    const taken = [...sheet.notes, ...sheet.comments].some(
      (one) => one.row === comment.row && one.column === comment.column,
    );
    if (!taken && !inside(comment.row, comment.column)) {
      sheet.comments.push({ ...comment, id: workbook.newId() });
    }
  }
}

/** The marks, on a sheet. */
export function marksOn(sheet: SheetModel, marks: readonly MarkContent[]): Mark[] {
  return marks.map((one) => ({ ...one, sheetId: sheet.id }));
}
