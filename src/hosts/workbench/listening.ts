import type { IRange } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { RowsMoved } from "../rows-moved";
import type { CellPlace } from "../sheet-host";

/** What the spreadsheet does when cells change: typing, pasting, sorting, inserting, deleting. */
const CHANGES_CELLS: ReadonlySet<string> = new Set([
  "sheet.mutation.set-range-values",
  "sheet.mutation.move-range",
  "sheet.mutation.reorder-range",
  "sheet.mutation.insert-row",
  "sheet.mutation.insert-col",
  "sheet.mutation.remove-rows",
  "sheet.mutation.remove-col",
  "sheet.mutation.move-rows",
  "sheet.mutation.move-columns",
]);

/** Whether rows are put in or taken out. */
const MOVES_ROWS: Readonly<Record<string, 1 | -1>> = {
  "sheet.mutation.insert-row": 1,
  "sheet.mutation.remove-rows": -1,
};

/** What it does when another cell is selected, on the same sheet or on another one. */
const SELECTS: ReadonlySet<string> = new Set([
  "sheet.operation.set-selections",
  "sheet.operation.set-worksheet-active",
]);

/**
 * Tells of every change of cells, with the sheet it happened on, and once more when the formulas
 * have followed it. Marks and notes are no change, though formulas are computed after them, too.
 */
export function listenToEdits(
  api: FUniver,
  listener: (sheetId: string, moved?: RowsMoved) => void,
): () => void {
  let followed: string | undefined;
  const stopListening = listen(api, CHANGES_CELLS, ({ id, params, byFormula }) => {
    const { subUnitId, range } = (params ?? {}) as { subUnitId?: unknown; range?: IRange };
    if (byFormula || typeof subUnitId !== "string") return;
    followed = subUnitId;
    listener(subUnitId, rowsMovedBy(id, range));
  });
  const results = api.getFormula().calculationResultApplied(() => {
    if (followed !== undefined) listener(followed);
    followed = undefined;
  });
  return () => {
    stopListening();
    results.dispose();
  };
}

function rowsMovedBy(id: string, range: IRange | undefined): RowsMoved | undefined {
  const sign = MOVES_ROWS[id];
  if (sign === undefined || !range) return undefined;
  return { at: range.startRow, count: sign * (range.endRow - range.startRow + 1) };
}

/** Tells the first cell of what is selected, whenever something else is. */
export function listenToSelection(api: FUniver, listener: (place: CellPlace) => void): () => void {
  return listen(api, SELECTS, () => {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const selected = sheet?.getSelection()?.getActiveRange()?.getRange();
    if (!sheet || !selected) return;
    // Whole rows have no first column of their own, whole columns no first row.
    const { startRow, startColumn } = selected;
    listener({ sheetId: sheet.getSheetId(), row: startRow || 0, column: startColumn || 0 });
  });
}

/** Something that the spreadsheet has done. */
interface Done {
  readonly id: string;
  readonly params: unknown;
  readonly byFormula: boolean;
}

function listen(api: FUniver, ids: ReadonlySet<string>, heard: (done: Done) => void): () => void {
  const listening = api.addEvent(api.Event.CommandExecuted, ({ id, params, options }) => {
    if (ids.has(id)) heard({ id, params, byFormula: options?.fromFormula === true });
  });
  return () => listening.dispose();
}
