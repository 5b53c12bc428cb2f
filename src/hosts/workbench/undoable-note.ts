import { IUndoRedoService } from "@univerjs/core";
import type { Sheet } from "./workbook";

/** The note of a cell, as the spreadsheet keeps it. */
export type Note = Parameters<ReturnType<Sheet["getRange"]>["createOrUpdateNote"]>[0];

/**
 * Gives a cell this note, or takes off the one that it has, so that Undo takes it back: what the spreadsheet
 * itself offers to programs for notes is not undone.
 */
export function setNote(sheet: Sheet, row: number, column: number, note: Note | undefined): void {
  const cell = sheet.getRange(row, column);
  const before = cell.getNote() ?? undefined;
  const [unitId, sheetId] = [sheet.getWorkbook().getUnitId(), sheet.getSheetId()];
  const place = { unitId, sheetId, row, col: column };
  const change = (to: Note | undefined) =>
    to
      ? { id: "sheet.mutation.update-note", params: { ...place, note: to } }
      : { id: "sheet.mutation.remove-note", params: place };
  if (note) cell.createOrUpdateNote(note);
  else cell.deleteNote();
  sheet
    .getInject()
    .get(IUndoRedoService)
    .pushUndoRedo({
      unitID: unitId,
      redoMutations: [change(note)],
      undoMutations: [change(before && { ...before })],
    });
}
