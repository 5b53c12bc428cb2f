import {
  addressOf,
  around,
  cellAt,
  cellsOf,
  columnsOf,
  LAST_COLUMN,
  LAST_ROW,
  overlap,
  rowsOf,
  type Rectangle,
} from "../block";
import { ExcelError } from "../excel-error";
import { filledBlock, heldAt, hold, type Held, type SheetModel } from "../sheet-model";
import { deleteRows, insertRows } from "../user-edits";
import { demandLeave, Emulated, type Session } from "./emulated";
import { ConditionalFormatCollection } from "./conditional-format";
import { RangeAreas } from "./range-areas";
import { surroundingRegion } from "./surrounding-region";
import { TableScopedCollection } from "./table";

/** Cells of which Excel still gives values. */
const MOST_CELLS_READ = 5_000_000;

/** The height of a row of a new sheet. */
const ROW_POINTS = 15;

export class Range extends Emulated {
  readonly className = "Range";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly block: Rectangle,
  ) {
    super(session);
    const { top, left, bottom, right } = block;
    if (top < 0 || left < 0 || bottom > LAST_ROW || right > LAST_COLUMN || bottom < top) {
      throw new ExcelError("InvalidArgument");
    }
  }

  get RowIndex(): number {
    return this.block.top;
  }
  /** Points from the edge of the sheet, where no row has a height of its own. */
  get Top(): number {
    return this.block.top * ROW_POINTS;
  }
  get ColumnIndex(): number {
    return this.block.left;
  }
  get RowCount(): number {
    return rowsOf(this.block);
  }
  get ColumnCount(): number {
    return columnsOf(this.block);
  }
  get IsEntireColumn(): boolean {
    return this.block.top === 0 && this.block.bottom === LAST_ROW;
  }
  get IsEntireRow(): boolean {
    return this.block.left === 0 && this.block.right === LAST_COLUMN;
  }
  /** Null where only some of the rows are hidden. */
  get RowHidden(): boolean | null {
    const { top, bottom } = this.block;
    const hidden = hiddenRowsOf(this.sheet).filter((row) => row >= top && row <= bottom).length;
    return hidden === 0 ? false : hidden === rowsOf(this.block) ? true : null;
  }
  get ColumnHidden(): boolean | null {
    const { left, right } = this.block;
    const { hiddenColumns } = this.sheet;
    const hidden = hiddenColumns.filter((column) => column >= left && column <= right).length;
    return hidden === 0 ? false : hidden === columnsOf(this.block) ? true : null;
  }
  get ConditionalFormats(): ConditionalFormatCollection {
    return new ConditionalFormatCollection(this.session, this.sheet, [this.block]);
  }
  get Format(): RangeFormat {
    return new RangeFormat(this.session, this.sheet, this.block);
  }

  get Values(): readonly (readonly Held[])[] | null {
    if (cellsOf(this.block) > MOST_CELLS_READ) return null;
    const { top, left, bottom, right } = this.block;
    const values: (readonly Held[])[] = [];
    for (let row = top; row <= bottom; row += 1) {
      const cells = this.sheet.grid[row];
      if (cells && left === 0 && cells.length === right + 1) values.push(cells);
      else {
        values.push(
          Array.from({ length: right - left + 1 }, (_, i) => heldAt(this.sheet, row, left + i)),
        );
      }
    }
    return values;
  }
  set Values(given: readonly (readonly unknown[])[] | unknown) {
    demandLeave(this.sheet, "values");
    const { top, left, bottom, right } = this.block;
    const rows = Array.isArray(given) ? (given as unknown[][]) : undefined;
    if (rows) this._ValidateArraySize(rows.length, rows[0]?.length ?? 0);
    for (let row = top; row <= bottom; row += 1) {
      for (let column = left; column <= right; column += 1) {
        this.type(row, column, rows ? rows[row - top]?.[column - left] : given);
      }
    }
    this.session.changedByAddin(this.sheet, addressOf(this.block));
  }

  /** Formulas, and the values of cells without one. */
  get Formulas(): Held[][] {
    const values = this.Values ?? [];
    return values.map((cells, r) =>
      cells.map((held, c) => {
        const [row, column] = [this.block.top + r, this.block.left + c];
        const own = this.sheet.formulas.find((each) => each.row === row && each.column === column);
        return own?.formula ?? held;
      }),
    );
  }
  set Formulas(given: readonly (readonly unknown[])[] | unknown) {
    const { top, left, bottom, right } = this.block;
    this.sheet.formulas = this.sheet.formulas.filter(
      ({ row, column }) => row < top || row > bottom || column < left || column > right,
    );
    this.Values = given;
  }

  /** What Excel makes of a typed value: formulas calculate, an apostrophe keeps a text a text. */
  private type(row: number, column: number, typed: unknown): void {
    if (typed === null) return;
    if (typeof typed === "string" && typed.startsWith("=")) {
      this.sheet.formulas.push({ row, column, formula: typed });
      hold(this.sheet, row, column, "calculated");
    } else if (typeof typed === "string" && /^\d+\/\d+$/.test(typed)) {
      hold(this.sheet, row, column, 45_000);
    } else if (typeof typed === "string") {
      hold(this.sheet, row, column, typed.replace(/^'/, ""));
    } else hold(this.sheet, row, column, typed as Held);
  }

  _ValidateArraySize(rows: number, columns: number): void {
    if (rows !== rowsOf(this.block) || columns !== columnsOf(this.block)) {
      throw new ExcelError("InvalidArgument");
    }
  }

  GetCell(row: number, column: number): Range {
    const { top, left } = this.block;
    return this.part(cellAt(top + row, left + column));
  }
  GetLastCell(): Range {
    return this.part(cellAt(this.block.bottom, this.block.right));
  }
  /** Of a protected sheet Excel tells nothing. */
  GetSpecialCellsOrNullObject(type: string): RangeAreas | null {
    if (type !== "Visible") throw new ExcelError("InvalidArgument");
    if (this.sheet.protection.protected) throw new ExcelError("AccessDenied");
    const { top, left, bottom, right } = this.block;
    const rows = shownRuns(top, bottom, hiddenRowsOf(this.sheet));
    const columns = shownRuns(left, right, this.sheet.hiddenColumns);
    const blocks = rows.flatMap(([first, last]) =>
      columns.map(([from, to]) => ({ top: first, bottom: last, left: from, right: to })),
    );
    return blocks.length > 0 ? new RangeAreas(this.session, this.sheet, blocks) : null;
  }
  GetRow(row: number): Range {
    return this.part({ ...this.block, top: this.block.top + row, bottom: this.block.top + row });
  }
  GetBoundingRect(other: Range): Range {
    return this.part(around([this.block, other.block]) ?? this.block);
  }
  GetEntireColumn(): Range {
    return this.part({ ...this.block, top: 0, bottom: LAST_ROW });
  }
  GetEntireRow(): Range {
    return this.part({ ...this.block, left: 0, right: LAST_COLUMN });
  }
  /** Only of whole rows, which is all that is done here. @returns The rows that were put in. */
  Insert(shift: string): Range {
    if (!this.IsEntireRow || shift !== "Down") throw new ExcelError("InvalidArgument");
    demandLeave(this.sheet, "values");
    const { top } = this.block;
    if (this.sheet.grid.length + rowsOf(this.block) > LAST_ROW + 1)
      throw new ExcelError("NonBlankCellOffSheet");
    insertRows(this.sheet, top, rowsOf(this.block));
    this.session.changedByAddin(this.sheet, addressOf(this.block));
    return this.part(this.block);
  }
  /** Only of whole rows. */
  Delete(shift: string): void {
    if (!this.IsEntireRow || shift !== "Up") throw new ExcelError("InvalidArgument");
    demandLeave(this.sheet, "values");
    deleteRows(this.sheet, this.block.top, rowsOf(this.block));
    this.session.changedByAddin(this.sheet, addressOf(this.block));
  }
  GetUsedRangeOrNullObject(valuesOnly: boolean | null): Range | null {
    const filled = filledBlock(this.sheet, this.block);
    const fills = valuesOnly
      ? []
      : this.sheet.fills.flatMap(
          ({ row, column }) => overlap(cellAt(row, column), this.block) ?? [],
        );
    const used = around([...(filled ? [filled] : []), ...fills]);
    return used ? this.part(used) : null;
  }
  GetSurroundingRegion(): Range {
    return this.part(surroundingRegion(this.sheet, this.block.top, this.block.left));
  }
  GetTables(): TableScopedCollection {
    return new TableScopedCollection(this.session, this.sheet, this.block);
  }
  GetMergedAreasOrNullObject(): RangeAreas | null {
    const merges = this.sheet.merges.filter((merge) => overlap(merge, this.block));
    return merges.length > 0 ? new RangeAreas(this.session, this.sheet, merges) : null;
  }
  Select(): void {
    if (this.sheet.visibility !== "Visible") throw new ExcelError("InvalidOperation");
    this.workbook.select(this.sheet, this.block);
  }

  private part(block: Rectangle): Range {
    return new Range(this.session, this.sheet, block);
  }
}

class RangeFormat extends Emulated {
  readonly className: string = "RangeFormat";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly block: Rectangle,
  ) {
    super(session);
  }

  get Font(): RangeFont {
    return new RangeFont(this.session, this.sheet, this.block);
  }
  set ColumnWidth(points: number) {
    demandLeave(this.sheet, "allowFormatCells");
    for (let column = this.block.left; column <= this.block.right; column += 1)
      this.sheet.widths.set(column, points);
  }
  AutofitColumns(): void {
    demandLeave(this.sheet, "allowFormatCells");
  }
}

class RangeFont extends RangeFormat {
  override readonly className = "RangeFont";

  set Bold(bold: boolean) {
    demandLeave(this.sheet, "allowFormatCells");
    if (bold) this.sheet.bold.push(this.block);
  }
}

function hiddenRowsOf({ filter, hiddenRows }: SheetModel): number[] {
  return [...new Set([...hiddenRows, ...(filter?.hiddenRows ?? [])])];
}

/** Runs of positions that are not hidden, first and last. */
function shownRuns(from: number, to: number, hidden: readonly number[]): [number, number][] {
  const runs: [number, number][] = [];
  for (let at = from; at <= to; at += 1) {
    if (hidden.includes(at)) continue;
    const last = runs[runs.length - 1];
    if (last && last[1] === at - 1) last[1] = at;
    else runs.push([at, at]);
  }
  return runs;
}
