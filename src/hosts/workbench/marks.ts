import { generateRandomId } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { WEIGHTS } from "../../fieldsheet/finding";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { breathe, each, inSlices, type Pause, type Steps } from "../in-slices";
import { markedCellsInSteps, type MarkedCell } from "../marked-cells";
import { MARK_STYLES } from "../mark-style";
import { totalOf } from "../mark-report";
import { markFormula, weightOfFormula } from "../mark-tag";
import { noteText, readNote } from "../our-note";
import { placeNames } from "../place-names";
import { sameRow } from "../same-values";
import type { Mark, MarkReport, ReadArea } from "../sheet-host";
import { cellCount, cellRuns } from "./cell-runs";
import { listenToEdits } from "./listening";
import { beginUndoStep } from "./one-undo-step";
import { SheetCells } from "./sheet-cells";
import { setNote } from "./undoable-note";
import { openWorkbook, sheetWithId, type Sheet } from "./workbook";

const NOTE_WIDTH = 260;
const NOTE_HEIGHT = 120;
/** More notes than these take this spreadsheet minutes. */
const MOST_NOTES = 1000;

/** Rectangles that one rule lies on; the grid takes its time with each of them. */
const RECTANGLES_A_RULE = 1000;

/**
 * Takes our earlier marks off the sheets of these marks and puts these on, as one step of Undo.
 *
 * @param pause Between two slices of the work a user may edit: then it is given up, as where it was stopped,
 *   and no mark of ours is left on these sheets.
 * @throws Problem `table-changed` where one of the checked tables holds something else by now.
 */
export async function putMarks(
  api: FUniver,
  marks: readonly Mark[],
  withNotes: boolean,
  checked: readonly ReadArea[],
  pause: Pause,
): Promise<MarkReport> {
  const bySheet = await inSlices(markedCellsInSteps(marks, checked), pause);
  const endUndoStep = beginUndoStep(api);
  let edited = false;
  const stopListening = listenToEdits(api, (sheetId) => {
    if (!bySheet.has(sheetId)) return;
    edited = true;
    endUndoStep();
  });
  const pauseOrGiveUp: Pause = async (share) => {
    await pause(share);
    if (edited) throw new Problem("table-changed");
  };
  try {
    return await inSlices(putInSteps(api, bySheet, withNotes, checked), pauseOrGiveUp);
  } catch (error) {
    for (const sheetId of bySheet.keys()) {
      // To its end, whatever was stopped.
      await inSlices(takeMarksOff(sheetWithId(api, sheetId)), breathe);
    }
    throw error;
  } finally {
    stopListening();
    endUndoStep();
  }
}

/** Takes every mark of ours off all sheets, as one step of Undo. */
export async function takeAllMarksOff(api: FUniver, pause: Pause): Promise<MarkReport> {
  const endUndoStep = beginUndoStep(api);
  try {
    const reports: MarkReport[] = [];
    for (const sheet of openWorkbook(api).getSheets()) {
      reports.push(await inSlices(takeMarksOff(sheet), pause));
    }
    return totalOf(reports);
  } finally {
    endUndoStep();
  }
}

function* putInSteps(
  api: FUniver,
  bySheet: ReadonlyMap<string, readonly MarkedCell[]>,
  withNotes: boolean,
  checked: readonly ReadArea[],
): Steps<MarkReport> {
  for (const table of checked) yield* demandUnchanged(api, table);
  const reports: Partial<MarkReport>[] = [];
  for (const [sheetId, cells] of bySheet) {
    const sheet = sheetWithId(api, sheetId);
    const { remarks } = yield* takeMarksOff(sheet);
    yield* putRules(sheet, cells);
    reports.push({ cells: cells.length, remarks });
    if (withNotes) reports.push(yield* putNotes(sheet, cells));
    reports.push(yield* hiddenReport(sheet, cells));
  }
  return totalOf(reports);
}

function* demandUnchanged(api: FUniver, { area, values }: ReadArea): Steps<void> {
  const cells = new SheetCells(sheetWithId(api, area.sheetId));
  yield* each(values, (then, row) => {
    const now = then.map((_, column) => cells.at(area.row + row, area.column + column));
    if (!sameRow(now, then)) throw new Problem("table-changed");
  });
}

function* hiddenReport(sheet: Sheet, cells: readonly MarkedCell[]): Steps<Partial<MarkReport>> {
  const shown = sheet.getSheet();
  const hidden = yield* each(
    cells,
    ({ row, column }) => !shown.getRowVisible(row) || !shown.getColVisible(column),
  );
  const count = hidden.filter(Boolean).length;
  return count > 0 ? { remarks: [say("marks-hidden", { count })] } : {};
}

function* putNotes(sheet: Sheet, cells: readonly MarkedCell[]): Steps<Partial<MarkReport>> {
  const noted = cells.filter(({ sentences }) => sentences.length > 0);
  const first = noted.slice(0, MOST_NOTES);
  const put = (yield* each(first, (cell) => putNote(sheet, cell), 1)).filter(Boolean).length;
  const kept = first.length - put;
  const remarks = [
    ...(kept > 0 ? [say("notes-kept", { count: kept })] : []),
    ...(noted.length > first.length ? [say("notes-only-first", { count: first.length })] : []),
  ];
  return { notes: put, remarks };
}

function* putRules(sheet: Sheet, cells: readonly MarkedCell[]): Steps<void> {
  for (const weight of WEIGHTS) {
    const ranges = cellRuns(cells.filter((cell) => cell.weight === weight));
    const { fill, ink } = MARK_STYLES[weight];
    for (let from = 0; from < ranges.length; from += RECTANGLES_A_RULE) {
      yield from / ranges.length;
      sheet.addConditionalFormattingRule(
        sheet
          .newConditionalFormattingRule()
          .whenFormulaSatisfied(markFormula(weight))
          .setRanges(ranges.slice(from, from + RECTANGLES_A_RULE))
          .setBackground(fill)
          .setFontColor(ink)
          .build(),
      );
    }
  }
}

/** Whether a note was put: a note of the user's own stays. */
function putNote(sheet: Sheet, { row, column, sentences }: MarkedCell): boolean {
  if (sheet.getRange(row, column).getNote()) return false;
  setNote(sheet, row, column, {
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

function* takeMarksOff(sheet: Sheet): Steps<MarkReport> {
  const rules = sheet.getConditionalFormattingRules().filter(isOurRule);
  yield* each(rules, ({ cfId }) => void sheet.deleteConditionalFormattingRule(cfId), 1);
  const changed: { row: number; column: number }[] = [];
  let notes = 0;
  yield* each(
    sheet.getNotes(),
    (seen) => {
      const note = asItIsNow(sheet, seen);
      if (!note) return;
      const read = readNote(note.note);
      if (read.whose === "changed") changed.push({ row: note.row, column: note.col });
      if (read.whose !== "ours" && read.whose !== "shared") return;
      notes += 1;
      const left = read.whose === "shared" ? { ...note, note: read.rest } : undefined;
      setNote(sheet, note.row, note.col, left);
    },
    1,
  );
  const places = placeNames(sheet.getSheetName(), changed);
  return {
    cells: rules.reduce((sum, { ranges }) => sum + cellCount(ranges), 0),
    notes,
    remarks: places === "" ? [] : [say("notes-changed-left", { places })],
  };
}

type ListedNote = ReturnType<Sheet["getNotes"]>[number];

/** A note that was listed a slice or more ago: it may have been moved, edited or deleted since. */
function asItIsNow(sheet: Sheet, seen: ListedNote): ListedNote | undefined {
  const { row, col } = seen;
  const there = sheet.getRange(row, col).getNote();
  if (there?.id === seen.id) return { ...there, row, col } as ListedNote;
  return sheet.getNotes().find(({ id }) => id === seen.id);
}

function isOurRule({ rule }: { rule: object }): boolean {
  const formula = "value" in rule ? rule.value : undefined;
  return typeof formula === "string" && weightOfFormula(formula) !== undefined;
}
