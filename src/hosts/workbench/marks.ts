import type { FUniver } from "@univerjs/core/facade";
import { WEIGHTS } from "../../fieldsheet/rule";
import { say } from "../../messages/pane-catalogue";
import { markedCellsBySheet, type MarkedCell } from "../marked-cells";
import { MARK_STYLES } from "../mark-style";
import { addedToOurNote, isOurNote, markFormula, noteText, weightOfFormula } from "../mark-tag";
import type { Mark, MarkReport } from "../sheet-host";
import { cellCount, cellRuns } from "./cell-runs";
import { openWorkbook, sheetWithId, type Sheet } from "./workbook";

const NOTE_WIDTH = 260;
const NOTE_HEIGHT = 120;

/** Takes our earlier marks off the sheets of these marks and puts these on. */
export function putMarks(
  api: FUniver,
  marks: readonly Mark[],
  withNotes: boolean,
  checkedSheet?: string,
): MarkReport {
  let count = 0;
  let notes = 0;
  let kept = 0;
  for (const [sheetId, cells] of markedCellsBySheet(marks, checkedSheet)) {
    const sheet = sheetWithId(api, sheetId);
    takeMarksOff(sheet);
    putRules(sheet, cells);
    count += cells.length;
    if (!withNotes) continue;
    for (const cell of cells)
      if (putNote(sheet, cell)) notes++;
      else kept++;
  }
  const remarks = kept > 0 ? [say("notes-kept", { count: kept })] : [];
  return { cells: count, notes, remarks };
}

/** Takes every mark of ours off all sheets. */
export function takeAllMarksOff(api: FUniver): MarkReport {
  const taken = openWorkbook(api).getSheets().map(takeMarksOff);
  return {
    cells: taken.reduce((sum, { cells }) => sum + cells, 0),
    notes: taken.reduce((sum, { notes }) => sum + notes, 0),
    remarks: [],
  };
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
    id: `${row},${column}`,
    row,
    col: column,
    note: noteText(sentences),
    width: NOTE_WIDTH,
    height: NOTE_HEIGHT,
    show: false,
  });
  return true;
}

function takeMarksOff(sheet: Sheet): { cells: number; notes: number } {
  const rules = sheet.getConditionalFormattingRules().filter(isOurRule);
  for (const { cfId } of rules) sheet.deleteConditionalFormattingRule(cfId);
  const notes = sheet.getNotes().filter(({ note }) => isOurNote(note));
  for (const note of notes) {
    const cell = sheet.getRange(note.row, note.col);
    // What somebody has written into a note of ours stays as their note.
    const added = addedToOurNote(note.note);
    if (added === "") cell.deleteNote();
    else cell.createOrUpdateNote({ ...note, note: added });
  }
  return {
    cells: rules.reduce((sum, { ranges }) => sum + cellCount(ranges), 0),
    notes: notes.length,
  };
}

function isOurRule({ rule }: { rule: object }): boolean {
  const formula = "value" in rule ? rule.value : undefined;
  return typeof formula === "string" && weightOfFormula(formula) !== undefined;
}
