import type { CellValue } from "../measure/cell-value";
import type { DecimalMark } from "../measure/number-from-cell";
import type { Weight } from "../fieldsheet/finding";
import type { CellArea } from "./cell-area";
import type { Side } from "./area-around";
import type { CellsMoved } from "./cells-moved";
import type { Pause } from "./in-slices";

export type { CellArea };

/** An area with what stands in it. */
export interface ReadArea {
  readonly area: CellArea;
  /** The area as people write it: "Loads!A1:N29". */
  readonly address: string;
  readonly values: readonly (readonly CellValue[])[];
  /**
   * Of what was selected, the sides at which it was cut off from further filled cells; absent where a
   * table was found.
   */
  readonly cut?: readonly Side[] | undefined;
  /** The rows further below that hold something in the same columns and were not read. */
  readonly below?: { readonly row: number; readonly rows: number } | undefined;
  /** The columns to the left and to the right that hold something in the same rows and were not read. */
  readonly beside?: readonly ColumnsBeside[] | undefined;
}

/** Columns on one side of an area, from the first to the last that is filled. */
export interface ColumnsBeside {
  readonly column: number;
  readonly columns: number;
}

/** One cell. */
export interface CellPlace {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** What is to stand in a block of cells; where it says `null`, the cell stays as it is. */
export interface CellBlock {
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly CellValue[])[];
}

/** A mark to be put on a cell. */
export interface Mark extends CellPlace {
  readonly weight: Weight;
  /** The sentences for a note, one finding each. */
  readonly sentences: readonly string[];
}

/** What was done, and what this spreadsheet program could not do, as ready sentences. */
export interface MarkReport {
  readonly cells: number;
  readonly notes: number;
  readonly remarks: readonly string[];
}

/** A chart that the spreadsheet draws itself, with the numbers that it is drawn from. */
export interface ChartOrder {
  /** Name wished for its sheet. */
  readonly sheetName: string;
  readonly title: string;
  /** What stands under each point. */
  readonly names: readonly string[];
  /** One line each, with a number for each name; a gap where there is none. */
  readonly lines: readonly {
    readonly name: string;
    readonly values: readonly (number | null)[];
  }[];
}

/** How a new sheet looks; without it the first row is a heading and columns fit what stands in them. */
export interface SheetLook {
  /** Rows that are set in bold, from 0. */
  readonly bold: readonly number[];
  /** Widths of columns, in characters. */
  readonly widths: readonly number[];
  /** What lies on blank rows of it, where the spreadsheet shows pictures. */
  readonly pictures?: readonly SheetPicture[];
  /** Rows with which a page begins on paper, from 0. */
  readonly breaks?: readonly number[];
}

/** A picture on a sheet, as wide as it is high in the pixels of a screen, whatever its own are. */
export interface SheetPicture {
  /** The row on which it begins, in the first column, from 0. */
  readonly row: number;
  readonly width: number;
  readonly height: number;
  /** What it shows, for those who do not see it. */
  readonly title: string;
  /** Draws it, as a PNG file. */
  png(): Promise<Uint8Array>;
}

/** What to read: the selection as it is, or the table that the selected cell stands in. */
export type ReadScope = "selection" | "table";

/** A reading of the pane's own settings, kept in the workbook where the host can. */
export type Settings = Readonly<Record<string, string | number | boolean>>;

/**
 * What to add to a sheet, told what stands on it; `undefined` where there is no such sheet. A line begins in
 * the first column that is filled, and what it leaves blank stays blank. What is thrown is passed on.
 */
export type LinesFor = (now: ReadArea | undefined) => readonly (readonly CellValue[])[];

/** Stops listening. */
export type StopListening = () => Promise<void> | void;

/**
 * The port between the task pane and a spreadsheet. It is all the pane knows of one.
 *
 * Every method rejects with a `Problem` whose sentence is ours, never with the host's own text.
 * Nothing here changes a cell, a format, a note or a rule of the user's, but `writeCells` those cells that
 * the user has asked for.
 */
export interface SheetHost {
  /** How decimals are written in this workbook. */
  decimalMark(): Promise<DecimalMark>;
  /** From which year the workbook counts its days; `undefined` where that cannot be told. */
  datesFrom(): Promise<1900 | 1904 | undefined>;
  /**
   * Reads the selection, or the table around it: the spreadsheet table if there is one, else the
   * block of filled cells. A selection of whole rows or columns is cut to the cells in use.
   * @param progress Told the rows read so far; what it throws ends the reading and is passed on.
   * @param around The cell whose table is meant, instead of the selected one.
   * @throws Problem `selection-empty`, `selection-in-parts`, `selection-too-large`, `host-busy` …
   */
  read(scope: ReadScope, progress?: (done: number) => void, around?: CellPlace): Promise<ReadArea>;
  /**
   * Reads the first rows in use of every sheet that can be seen: the sheet in front first, then the
   * others in their order. An empty sheet has no rows.
   */
  sheetTops(rows: number): Promise<readonly ReadArea[]>;
  /**
   * Reads again what was read before, as far as it goes now: a table with the rows and columns that were
   * added at its edges, without those that are blank by now; a part of a table that was selected as it was.
   * @param before What was read, its area where it lies now.
   */
  readAgain(before: ReadArea, progress?: (done: number) => void): Promise<ReadArea>;
  /**
   * Selects a cell and shows it.
   * @param along Cells to read at the same moment.
   * @returns What stands in these.
   */
  select(place: CellPlace, along?: CellArea): Promise<readonly (readonly CellValue[])[]>;
  /**
   * Takes our earlier marks off the sheets of these marks and puts these on: one conditional format
   * a weight and sheet, recognised by its formula, and a note where the user has none.
   * @param checked The tables that were checked: the earlier marks on their sheets go also where nothing
   *   was found.
   * @param pause Where it ends the work, none of these marks is on the sheets; earlier ones may be gone.
   * @throws Problem `table-changed` where one holds something else by now; then no mark of ours is on it.
   */
  mark(
    marks: readonly Mark[],
    withNotes: boolean,
    checked?: readonly ReadArea[],
    pause?: Pause,
  ): Promise<MarkReport>;
  /**
   * Takes every mark of ours off the whole workbook.
   * @param pause Where it ends the work, what was not yet taken off stays.
   */
  unmark(pause?: Pause): Promise<MarkReport>;
  /** Reads all that stands on the sheet of a name; `undefined` where the workbook has none. */
  readSheet(name: string): Promise<ReadArea | undefined>;
  /**
   * Adds lines below all that stands on a sheet, which is made where there is none. Nothing that stands
   * there is written over, whoever else writes at the same moment. The sheet in front stays in front.
   * @returns What stands on the sheet then.
   */
  addLines(name: string, lines: LinesFor): Promise<ReadArea>;
  /**
   * Writes a table to a new sheet of its own and shows it; never over an existing sheet. One with a look
   * of its own is also made ready for paper: landscape, one page wide, with its name and page numbers.
   */
  writeResultsSheet(
    name: string,
    table: readonly (readonly CellValue[])[],
    look?: SheetLook,
    pause?: Pause,
  ): Promise<string>;
  /** Whether a new sheet shows the pictures of its look. */
  readonly showsPictures: boolean;
  /**
   * Puts a formula into the selected cell, where it is shown in the user's own way.
   * @param formula In English, arguments set off by commas.
   * @returns The address of the cell.
   * @throws Problem `cell-is-filled`: nothing that stands in a cell is written over.
   */
  insertFormula(formula: string): Promise<string>;
  /** The name of the file, as far as the spreadsheet tells it. */
  workbookName(): Promise<string>;
  /**
   * Hands a table over as a file of its own, named without its ending. Absent where the spreadsheet
   * itself keeps files.
   */
  saveTable?(
    name: string,
    as: "xlsx" | "csv",
    table: readonly (readonly CellValue[])[],
    look: SheetLook,
  ): Promise<void>;
  /**
   * Puts a line chart and its numbers on a new sheet of its own and shows it. Absent where the
   * spreadsheet draws no charts.
   * @returns The name of the sheet.
   */
  addChart?(chart: ChartOrder): Promise<string>;
  /**
   * How blank cells come to the worksheet functions: as a blank, as 0, or it cannot be told. The pane
   * reads cells itself. Absent where they always come as blanks.
   */
  howBlanksCome?(): "blank" | "zero" | "unknown";
  /**
   * Adds a sheet with this name and content behind the others, without showing it.
   * @throws Problem `changed-meanwhile` where there is one by now.
   */
  addSheet(name: string, table: readonly (readonly CellValue[])[], look?: SheetLook): Promise<void>;
  /**
   * Writes into a sheet that was read as a whole, where it holds what was read: a sheet of settings, on
   * the user's click.
   * @throws Problem `changed-meanwhile` where one of the cells holds something else by now; then nothing
   *   is written.
   */
  writeCells(read: ReadArea, blocks: readonly CellBlock[]): Promise<void>;
  settings(): Promise<Settings>;
  saveSettings(settings: Settings): Promise<void>;
  onSelectionChange(listener: (place: CellPlace) => void): Promise<StopListening>;
  /**
   * Tells of edits, pastes, sorts, inserted and deleted rows; never of our own marks. Of whole rows
   * and columns it also tells where they were put in or taken out.
   */
  onEdit(listener: (sheetId: string, moved?: CellsMoved) => void): Promise<StopListening>;
}
