import { around, type Rectangle } from "./block";

/** What stands in a cell; "" is a blank. */
export type Held = string | number | boolean;

export interface FormatModel {
  id: string;
  type: string;
  areas: Rectangle[];
  formula: string;
  fill: string;
  ink: string;
}

export interface NoteModel {
  row: number;
  column: number;
  content: string;
}

export interface TableModel {
  id: string;
  name: string;
  block: Rectangle;
  showTotals: boolean;
}

export interface ChartModel {
  type: string;
  from: Rectangle;
  title: string;
  place: Rectangle | undefined;
}

export interface ProtectionModel {
  protected: boolean;
  allowFormatCells: boolean;
  allowEditObjects: boolean;
}

/** One sheet: everything on it that a user can have put there. Plain data. */
export interface SheetModel {
  id: string;
  name: string;
  visibility: "Visible" | "Hidden" | "VeryHidden";
  /** Cells row by row. Rows may be shared between sheets' positions: replace, never write into one. */
  grid: (readonly Held[] | undefined)[];
  formulas: { row: number; column: number; formula: string }[];
  fills: { row: number; column: number; color: string }[];
  bold: Rectangle[];
  /** Of columns, in points. */
  widths: Map<number, number>;
  /** How it is printed, as far as it was set. */
  page: {
    orientation?: string;
    pagesWide?: number | undefined;
    leftFooter?: string;
    rightFooter?: string;
    /** Rows with which a page begins, from 0. */
    breaks?: number[];
  };
  /** In order of priority. */
  formats: FormatModel[];
  notes: NoteModel[];
  comments: (NoteModel & { id: string })[];
  validations: { block: Rectangle; rule: string }[];
  merges: Rectangle[];
  filter: { block: Rectangle; hiddenRows: number[] } | undefined;
  /** Hidden by hand, not by the filter. */
  hiddenRows: number[];
  hiddenColumns: number[];
  tables: TableModel[];
  charts: ChartModel[];
  pictures: PictureModel[];
  protection: ProtectionModel;
}

/** A picture that lies on a sheet; place and size in points. */
export interface PictureModel {
  readonly base64: string;
  left: number;
  top: number;
  width: number;
  height: number;
  description: string;
}

/** An empty sheet. */
export function newSheet(id: string, name: string): SheetModel {
  return {
    id,
    name,
    visibility: "Visible",
    grid: [],
    formulas: [],
    fills: [],
    bold: [],
    widths: new Map(),
    page: {},
    formats: [],
    notes: [],
    comments: [],
    validations: [],
    merges: [],
    filter: undefined,
    hiddenRows: [],
    hiddenColumns: [],
    tables: [],
    charts: [],
    pictures: [],
    protection: { protected: false, allowFormatCells: false, allowEditObjects: false },
  };
}

/** What stands in a cell. */
export function heldAt(sheet: SheetModel, row: number, column: number): Held {
  return sheet.grid[row]?.[column] ?? "";
}

/** Puts something into a cell. */
export function hold(sheet: SheetModel, row: number, column: number, held: Held): void {
  const cells = [...(sheet.grid[row] ?? [])];
  while (cells.length < column) cells.push("");
  cells[column] = held;
  sheet.grid[row] = cells;
}

/** The smallest rectangle around the filled cells of a block. */
export function filledBlock(sheet: SheetModel, block: Rectangle): Rectangle | undefined {
  const lines: Rectangle[] = [];
  const last = Math.min(block.bottom, sheet.grid.length - 1);
  for (let row = block.top; row <= last; row += 1) {
    const cells = sheet.grid[row];
    if (!cells) continue;
    let left = block.left;
    let right = Math.min(block.right, cells.length - 1);
    while (left <= right && isBlank(cells[left])) left += 1;
    while (right >= left && isBlank(cells[right])) right -= 1;
    if (left <= right) lines.push({ top: row, left, bottom: row, right });
  }
  return around(lines);
}

function isBlank(held: Held | undefined): boolean {
  return held === undefined || held === "";
}
