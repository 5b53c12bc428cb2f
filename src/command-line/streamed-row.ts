import type { CellValue } from "../measure/cell-value";
import type { Problem } from "../measure/problem";

/** A row of a stream, or what was left out of it. */
export interface StreamedRow {
  /** Absent where the line could not be read. */
  readonly cells?: readonly CellValue[];
  /** The line, counted from 1. */
  readonly line: number;
  /** Why something in the line was not read. */
  readonly problem?: Problem;
}
