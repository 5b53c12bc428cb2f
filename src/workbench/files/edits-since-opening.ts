import type { FUniver } from "@univerjs/core/facade";
import { openWorkbook } from "../../hosts/workbench/workbook";
import { savedContent } from "./saved-content";
import type { CellContent } from "../../files/workbook/cell-content";
import { cellsChangedBy } from "./cells-changed-by";

/** A cell that was changed, with what stood in it when the file was opened. */
export interface TouchedCell {
  readonly row: number;
  readonly column: number;
  readonly before: CellContent;
}

/** How the spreadsheet tells that it puts results into cells. */
interface Calculated {
  readonly applyFormulaCalculationResult?: boolean;
}

/** What puts rows or columns in, takes them out or moves them. */
const MOVING: ReadonlySet<string> = new Set([
  "sheet.mutation.insert-row",
  "sheet.mutation.remove-rows",
  "sheet.mutation.insert-col",
  "sheet.mutation.remove-col",
  "sheet.mutation.move-rows",
  "sheet.mutation.move-columns",
]);
const UNDONE = "univer.command.undo";
/** More columns than any sheet has, so that a row and a column make one number. */
const COLUMNS = 20_000;

/** What a user does to the cells of a file after it was opened, so that it can be saved with it. */
export class EditsSinceOpening {
  private readonly touched = new Map<string, Map<number, TouchedCell>>();
  private readonly moves = new Map<string, number>();
  private readonly listening;

  constructor(private readonly api: FUniver) {
    this.listening = api.addEvent(api.Event.BeforeCommandExecute, ({ id, params, options }) => {
      // What formulas come to is no edit; the formula itself is put in by the engine as well.
      if (!params || (options as Calculated | undefined)?.applyFormulaCalculationResult) return;
      for (const [sheetId, row, column] of cellsChangedBy(id, params))
        this.keep(sheetId, row, column);
      if (MOVING.has(id)) this.move(params);
    });
  }

  /** The cells of a sheet that were touched, whether or not they hold something else now. */
  cells(sheetId: string): TouchedCell[] {
    return [...(this.touched.get(sheetId)?.values() ?? [])];
  }

  /** Whether cells stand elsewhere than in the file, since rows or columns were put in or taken out. */
  hasMoved(sheetId: string): boolean {
    return (this.moves.get(sheetId) ?? 0) > 0;
  }

  stop(): void {
    this.listening.dispose();
  }

  /** While cells stand elsewhere nothing can be saved, and undoing that undoes what came after it. */
  private keep(sheetId: string, row: number, column: number): void {
    if (this.hasMoved(sheetId)) return;
    const ofSheet = this.touched.get(sheetId) ?? new Map<number, TouchedCell>();
    this.touched.set(sheetId, ofSheet);
    const place = row * COLUMNS + column;
    if (ofSheet.has(place)) return;
    const sheet = openWorkbook(this.api).getSheetBySheetId(sheetId);
    if (sheet) ofSheet.set(place, { row, column, before: savedContent(sheet, row, column) });
  }

  private move(params: { readonly subUnitId?: string; readonly trigger?: string }): void {
    const { subUnitId = "", trigger } = params;
    const moves = this.moves.get(subUnitId) ?? 0;
    this.moves.set(subUnitId, trigger === UNDONE ? Math.max(0, moves - 1) : moves + 1);
  }
}
