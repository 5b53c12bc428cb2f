import type { BlockPlace } from "./block-place";
import type { HeadedColumnsApart } from "./columns-apart";
import type { CellValue } from "../measure/cell-value";
import type { DecimalMark } from "../measure/number-from-cell";
import type { Columns } from "./column-place";
import type { FieldId } from "./fields";
import type { UnfitSetting } from "./kept-columns";
import type { RecognisedColumn } from "./recognition";
import type { FieldRecord } from "./record";
import type { UnreadColumn } from "./unread-column";

/**
 * The tests of a sheet as they were read: a table with one test a row, or forms with one test each.
 * Everything after this knows tests and fields; where a value stands is asked for at the edge.
 */
export interface SheetReading {
  /** How decimals are written. */
  readonly decimal: DecimalMark;
  /** What each field was found as: its header or label and the unit written there. */
  readonly columns: Columns;
  /** The tests, in the order of the sheet; blank rows too, so that positions stay. */
  readonly records: readonly FieldRecord[];
  /** What every column was taken for, and why; none in a form. */
  readonly recognised: readonly RecognisedColumn[];
  /** What the user has said of columns and names no column of this sheet, or several. */
  readonly unfit: readonly UnfitSetting[];
  /** Columns that hold something and were taken for nothing, or could be one of two things. */
  readonly unread: readonly UnreadColumn[];
  /** Columns beside the table that are none of its own and were not read; none in a form. */
  readonly apart: readonly HeadedColumnsApart[];
  /**
   * The first row that heads the columns otherwise, by its position among the tests, and its first header.
   * What stands in it and below it was not read.
   */
  readonly headedAgain?: {
    readonly record: number;
    readonly column: number;
    readonly header: string;
  };
  /** Where every row holds one reading: the column that counts them, and the test to which a row belongs. */
  readonly together?: {
    readonly column: number;
    readonly header: string;
    readonly testOf: (row: number) => number;
  };
  /** What stands once for the table and was taken for every test. */
  readonly saidOnce?: readonly { readonly header: string; readonly place: BlockPlace }[];
  /** Whether the sheet has a place for the field. */
  has(field: FieldId): boolean;
  /** What stands in the cell of a field. */
  cell(record: number, field: FieldId): CellValue;
  /**
   * Where something stands in the block.
   *
   * @param record Position of the test; null for the sheet as a whole, which leads to the headers.
   * @param field The field; null for the test as a whole, which leads to its first cell.
   */
  placeOf(record: number | null, field: FieldId | null): BlockPlace;
  /** How many forms were read; absent where the tests stand in a table. */
  readonly forms?: number;
  /** Whether the forms stand in one table, several in a row or a row for each value. */
  readonly inTable?: true | undefined;
  /** In forms, where the label of each of `recognised` stands first. */
  readonly labels?: readonly BlockPlace[];
}
