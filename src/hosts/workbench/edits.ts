import type { FUniver } from "@univerjs/core/facade";

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

/** Tells of every change of cells, with the sheet it happened on. Marks and notes are none. */
export function listenToEdits(api: FUniver, listener: (sheetId: string) => void): () => void {
  const listening = api.addEvent(api.Event.CommandExecuted, ({ id, params }) => {
    if (!CHANGES_CELLS.has(id)) return;
    const sheetId = (params as { subUnitId?: unknown } | undefined)?.subUnitId;
    if (typeof sheetId === "string") listener(sheetId);
  });
  return () => listening.dispose();
}
