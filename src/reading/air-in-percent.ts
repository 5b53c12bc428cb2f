import type { CellValue } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { percentAsShare } from "../measure/percent-as-share";
import {
  specificationFromCell,
  toleranceFromCell,
  type Specification,
  type Tolerance,
} from "../measure/specification";

/*
 * Cells that hold air in percent. Where one has a percentage format its number is a share of one; taken
 * as percent it would put every test above its limits, so each of these has the issue `percent-as-share`.
 */

/** An air content, %. Issues as for `numberFromCell`. */
export function percentFromCell(
  cell: CellValue,
  decimal?: DecimalMark,
): number | undefined | Issue {
  const percent = numberFromCell(cell, decimal);
  return typeof percent === "number" ? (percentAsShare(percent) ?? percent) : percent;
}

/** What is specified of the air, %. Issues as for `specificationFromCell`. */
export function airSpecificationFromCell(
  cell: CellValue,
  decimal?: DecimalMark,
): Specification | undefined | Issue {
  const read = specificationFromCell(cell, decimal);
  if (read === undefined || isIssue(read)) return read;
  return percentAsShare(read.aim, read.low, read.high) ?? read;
}

/** How far the air may lie from its target, %. Issues as for `toleranceFromCell`. */
export function airToleranceFromCell(
  cell: CellValue,
  decimal?: DecimalMark,
): Tolerance | undefined | Issue {
  const read = toleranceFromCell(cell, decimal);
  if (read === undefined || isIssue(read)) return read;
  return percentAsShare(read.below, read.above) ?? read;
}
