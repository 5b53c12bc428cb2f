import type { FUniver } from "@univerjs/core/facade";
import { cellReference } from "../../files/workbook/cell-reference";
import type { MarkRule } from "../../files/workbook/mark-rules";
import type { NewSheet } from "../../files/workbook/new-sheet";
import { saveWorkbook, type SheetChanges } from "../../files/workbook/save-workbook";
import { MARK_STYLES } from "../../hosts/mark-style";
import { weightOfFormula } from "../../hosts/mark-tag";
import { freeSheetName } from "../../hosts/sheet-name";
import { openWorkbook, type Sheet } from "../../hosts/workbench/workbook";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import type { EditsSinceOpening } from "./edits-since-opening";
import { isSameContent, savedContent, savedRows } from "./saved-content";

/** The file behind the workbook that is open. */
export interface FileBehind {
  /** Undefined for cells that came from no workbook. */
  readonly original?: Uint8Array;
  /** By id of the sheet that shows it, the name of a sheet of the file. */
  readonly sheets: ReadonlyMap<string, string>;
  /** Names of all its sheets, the hidden ones too. */
  readonly names: readonly string[];
  /** By id of the sheet, its notes by cell, as "C5", as they are in the file. */
  readonly notes: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

/** A workbook as it is to be saved. */
export interface FileToSave {
  readonly bytes: Uint8Array;
  readonly sheets: number;
  readonly cells: number;
  readonly notes: number;
  /** What is not in it, in sentences. */
  readonly remarks: readonly string[];
}

/** Pixels of a character and of the space around a text. */
const CHARACTER_WIDTH = 7;
const CELL_PADDING = 5;

/**
 * The file as it was opened, with our marks, changed notes and cells and new sheets put in.
 *
 * @throws Problem `moved-cells-not-saved`, `file-damaged`.
 */
export async function fileToSave(
  api: FUniver,
  file: FileBehind,
  edits: EditsSinceOpening,
): Promise<FileToSave> {
  const added: NewSheet[] = [];
  const changes: SheetChanges[] = [];
  const remarks: string[] = [];
  const there = new Set<string>();
  for (const sheet of openWorkbook(api).getSheets()) {
    const id = sheet.getSheetId();
    const inFile = file.sheets.get(id);
    if (inFile !== undefined) {
      there.add(inFile);
      if (edits.hasMoved(id)) throw new Problem("moved-cells-not-saved", { sheet: inFile });
      if (inFile !== sheet.getSheetName())
        remarks.push(say("new-name-not-saved", { sheet: inFile }));
    }
    const names = [...file.names, ...added.map(({ name }) => name)];
    const name = inFile ?? freeSheetName(sheet.getSheetName(), names);
    if (inFile === undefined) added.push(newSheet(sheet, name));
    changes.push({
      sheet: name,
      rules: rulesOf(sheet),
      notes: changedNotes(sheet, file.notes.get(id) ?? new Map()),
      cells: inFile === undefined ? [] : changedCells(sheet, edits),
    });
  }
  for (const name of file.sheets.values())
    if (!there.has(name)) remarks.push(say("deleted-sheet-kept", { sheet: name }));
  const saved = await saveWorkbook(file.original, added, changes, isOurFormula);
  for (const { sheet, row, column } of saved.left)
    remarks.push(say("cell-not-saved", { sheet, cell: cellReference(row, column) }));
  return {
    bytes: saved.bytes,
    remarks,
    sheets: added.length,
    cells: changes.reduce((sum, { cells }) => sum + cells.length, 0) - saved.left.length,
    notes: changes.reduce((sum, { notes }) => sum + notes.size, 0),
  };
}

/** The notes of a sheet by cell. */
export function notesByCell(sheet: Sheet): Map<string, string> {
  return new Map(sheet.getNotes().map(({ row, col, note }) => [cellReference(row, col), note]));
}

function isOurFormula(formula: string): boolean {
  return weightOfFormula(`=${formula}`) !== undefined;
}

/** Our rules, each as many as the sheet has: marks may have been put on by parts. */
function rulesOf(sheet: Sheet): MarkRule[] {
  return sheet.getConditionalFormattingRules().flatMap(({ rule, ranges }) => {
    const formula = "value" in rule && typeof rule.value === "string" ? rule.value : "";
    const weight = weightOfFormula(formula);
    if (!weight) return [];
    const { fill, ink } = MARK_STYLES[weight];
    const blocks = ranges.map(({ startRow, endRow, startColumn, endColumn }) => ({
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    }));
    return [{ formula: formula.replace(/^=/, ""), blocks, fill, ink }];
  });
}

function changedNotes(
  sheet: Sheet,
  before: ReadonlyMap<string, string>,
): Map<string, string | null> {
  const now = notesByCell(sheet);
  const changed = new Map<string, string | null>();
  for (const [cell, text] of now) if (before.get(cell) !== text) changed.set(cell, text);
  for (const cell of before.keys()) if (!now.has(cell)) changed.set(cell, null);
  return changed;
}

function changedCells(sheet: Sheet, edits: EditsSinceOpening) {
  return edits.cells(sheet.getSheetId()).flatMap(({ row, column, before }) => {
    const content = savedContent(sheet, row, column);
    return isSameContent(before, content) ? [] : [{ row, column, content }];
  });
}

function newSheet(sheet: Sheet, name: string): NewSheet {
  const rows = savedRows(sheet);
  const columns = rows[0]?.length ?? 0;
  return {
    name,
    rows,
    heading: sheet.getRange(0, 0).getCellStyleData()?.bl === 1,
    widths: Array.from({ length: columns }, (_, i) =>
      Math.max(1, Math.round((sheet.getColumnWidth(i) - CELL_PADDING) / CHARACTER_WIDTH)),
    ),
  };
}
