import { generateRandomId } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { WEIGHTS } from "../../fieldsheet/finding";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { markedCellsBySheet, type MarkedCell } from "../marked-cells";
import { MARK_STYLES } from "../mark-style";
import { totalOf } from "../mark-report";
import { markFormula, weightOfFormula } from "../mark-tag";
import { noteText, readNote } from "../our-note";
import { placeNames } from "../place-names";
import { sameRows } from "../same-values";
import type { Mark, MarkReport, ReadArea } from "../sheet-host";
import { cellCount, cellRuns } from "./cell-runs";
import { valuesOf } from "./reading";
import { openWorkbook, sheetWithId, type Sheet } from "./workbook";

const NOTE_WIDTH = 260;
const NOTE_HEIGHT = 120;
/** More notes than these take this spreadsheet minutes. */
const MOST_NOTES = 1000;

/**
 * Takes our earlier marks off the sheets of these marks and puts these on.
 *
 * @throws Problem `table-changed` where the cells that were checked hold something else by now.
 */
export function putMarks(
  api: FUniver,
  marks: readonly Mark[],
  withNotes: boolean,
  checked?: ReadArea,
): MarkReport {
  if (checked) demandUnchanged(api, checked);
  const bySheet = [...markedCellsBySheet(marks, checked?.area.sheetId)];
  return totalOf(
    bySheet.flatMap(([sheetId, cells]) => {
      const sheet = sheetWithId(api, sheetId);
      const { remarks } = takeMarksOff(sheet);
      putRules(sheet, cells);
      return [
        { cells: cells.length, remarks },
        ...(withNotes ? [putNotes(sheet, cells)] : []),
        hiddenReport(sheet, cells),
      ];
    }),
  );
}

function demandUnchanged(api: FUniver, { area, values }: ReadArea): void {
  const sheet = sheetWithId(api, area.sheetId);
  if (!sameRows(valuesOf(sheet, area), values)) throw new Problem("table-changed");
}

/** Takes every mark of ours off all sheets. */
export function takeAllMarksOff(api: FUniver): MarkReport {
  return totalOf(openWorkbook(api).getSheets().map(takeMarksOff));
}

function hiddenReport(sheet: Sheet, cells: readonly MarkedCell[]): Partial<MarkReport> {
  const shown = sheet.getSheet();
  const count = cells.filter(
    ({ row, column }) => !shown.getRowVisible(row) || !shown.getColVisible(column),
  ).length;
  return count > 0 ? { remarks: [say("marks-hidden", { count })] } : {};
}

function putNotes(sheet: Sheet, cells: readonly MarkedCell[]): Partial<MarkReport> {
  const noted = cells.filter(({ sentences }) => sentences.length > 0);
  const first = noted.slice(0, MOST_NOTES);
  const put = first.filter((cell) => putNote(sheet, cell)).length;
  const kept = first.length - put;
  const remarks = [
    ...(kept > 0 ? [say("notes-kept", { count: kept })] : []),
    ...(noted.length > first.length ? [say("notes-only-first", { count: first.length })] : []),
  ];
  return { notes: put, remarks };
}

function putRules(sheet: Sheet, cells: readonly MarkedCell[]): void {
  for (const weight of WEIGHTS) {
    const ranges = cellRuns(cells.filter((cell) => cell.weight === weight));
    if (ranges.length === 0) continue;
    const { fill, ink } = MARK_STYLES[weight];
    sheet.addConditionalFormattingRule(
      sheet
        .newConditionalFormattingRule()
        .whenFormulaSatisfied(markFormula(weight))
        .setRanges(ranges)
        .setBackground(fill)
        .setFontColor(ink)
        .build(),
    );
  }
}

/** Whether a note was put: a note of the user's own stays. */
function putNote(sheet: Sheet, { row, column, sentences }: MarkedCell): boolean {
  const cell = sheet.getRange(row, column);
  if (cell.getNote()) return false;
  cell.createOrUpdateNote({
    // Not made of the place: a note that became the user's may have been moved from there.
    id: generateRandomId(),
    row,
    col: column,
    note: noteText(sentences),
    width: NOTE_WIDTH,
    height: NOTE_HEIGHT,
    show: false,
  });
  return true;
}

function takeMarksOff(sheet: Sheet): MarkReport {
  const rules = sheet.getConditionalFormattingRules().filter(isOurRule);
  for (const { cfId } of rules) sheet.deleteConditionalFormattingRule(cfId);
  const changed: { row: number; column: number }[] = [];
  let notes = 0;
  for (const note of sheet.getNotes()) {
    const read = readNote(note.note);
    if (read.whose === "changed") changed.push({ row: note.row, column: note.col });
    if (read.whose !== "ours" && read.whose !== "shared") continue;
    notes += 1;
    const cell = sheet.getRange(note.row, note.col);
    if (read.whose === "ours") cell.deleteNote();
    else cell.createOrUpdateNote({ ...note, note: read.rest });
  }
  const places = placeNames(sheet.getSheetName(), changed);
  return {
    cells: rules.reduce((sum, { ranges }) => sum + cellCount(ranges), 0),
    notes,
    remarks: places === "" ? [] : [say("notes-changed-left", { places })],
  };
}

function isOurRule({ rule }: { rule: object }): boolean {
  const formula = "value" in rule ? rule.value : undefined;
  return typeof formula === "string" && weightOfFormula(formula) !== undefined;
}
