import type { CellValue } from "../measure/cell-value";
import type { DecimalMark } from "../measure/number-from-cell";
import type { Limits } from "./judged-test";
import type { Setup } from "../reading/setup/setup";

/** A limit given for the whole table, for each record, or not at all (then columns are looked for). */
export type GivenLimit = number | readonly CellValue[] | undefined;

/** What a check may be told besides the table. */
export interface CheckOptions {
  readonly low?: GivenLimit;
  readonly high?: GivenLimit;
  /** Limits for tests of which neither the sheet nor the setup gives any, and beside a column of the other. */
  readonly otherwise?: Limits;
  /** "," where the workbook writes decimal commas. */
  readonly decimal?: DecimalMark;
  /** What is written down of columns and mixes, once for many sheets. */
  readonly setup?: Setup;
  /** Where the scale of the meter ends, %; 9 when absent, to which every scale reaches. */
  readonly scaleEnd?: number;
}
