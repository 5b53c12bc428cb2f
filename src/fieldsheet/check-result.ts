import type { Verdict } from "../acceptance/limits";
import type { Columns } from "../reading/column-place";
import type { JudgedRow, TestState } from "./judged-row";
import type { Finding } from "./rule";

/** What a check says about one row. */
export interface RowResult {
  readonly row: number;
  /** The row's own id: its sample, else its load; "" when it has neither. */
  readonly sample: string;
  readonly test: TestState;
  /** Air content, %; absent unless the test is valid. */
  readonly air?: number;
  /** Against the specification; absent without limits or air. */
  readonly specification?: Verdict;
  readonly findings: readonly Finding[];
  /** The row as read and judged, for whoever wants to show the steps. */
  readonly judged: JudgedRow;
}

/** What a check says about a table. */
export interface CheckResult {
  readonly columns: Columns;
  readonly rows: readonly RowResult[];
  /** Every finding: those of the sheet as a whole first, then row by row. */
  readonly findings: readonly Finding[];
}
