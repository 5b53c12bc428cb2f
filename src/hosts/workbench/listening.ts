import type { IRange } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { CellsMoved } from "../cells-moved";
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

/** Whether rows or columns are put in or taken out. */
const MOVES: Readonly<Record<string, { readonly axis: "row" | "column"; readonly sign: 1 | -1 }>> =
  {
    "sheet.mutation.insert-row": { axis: "row", sign: 1 },
    "sheet.mutation.remove-rows": { axis: "row", sign: -1 },
    "sheet.mutation.insert-col": { axis: "column", sign: 1 },
    "sheet.mutation.remove-col": { axis: "column", sign: -1 },
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
  listener: (sheetId: string, moved?: CellsMoved) => void,
): () => void {
  let followed: string | undefined;
  const stopListening = listen(api, CHANGES_CELLS, ({ id, params, byFormula }) => {
    const { subUnitId, range } = (params ?? {}) as { subUnitId?: unknown; range?: IRange };
    if (byFormula || typeof subUnitId !== "string") return;
    followed = subUnitId;
    listener(subUnitId, cellsMovedBy(id, range));
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

function cellsMovedBy(id: string, range: IRange | undefined): CellsMoved | undefined {
  const how = MOVES[id];
  if (!how || !range) return undefined;
  const { axis, sign } = how;
  const [at, last] =
    axis === "row" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];
  return { axis, at, count: sign * (last - at + 1) };
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
