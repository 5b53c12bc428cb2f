import { boundedFromCell, isOver, type Bounded } from "../measure/bounded";
import { quoted, type CellValue } from "../measure/cell-value";
import { countFromCell, DIVISIONS } from "../measure/counted";
import { faultFromCell, type Asked } from "../measure/fault-from-cell";
import { folded } from "../measure/folded";
import { isIssue, issue, type Issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import { FOAM_LIMIT } from "../methods/volumetric-air/validity";

/** A header that asks whether there is more foam than allowed, not whether there is any. */
const ASKS_FOR_TOO_MUCH =
  />|\b(?:over\b|more than|exceed|excess|too much|beyond|mas de|exces|demasiad|plus de|trop\b|depass|mehr als|uber\b|zu viel)/;

/**
 * Reads the foam on the neck: its divisions, or the answer to whether there is more than allowed. A yes
 * to whether there is any does not tell how much.
 *
 * @returns `undefined` for a blank; the issue `bound-leaves-open`, `tick-is-unclear`, or one of
 *   `countFromCell`.
 */
export function foamFromCell(
  cell: CellValue,
  { header = "", opposite = false }: Asked,
  decimal: DecimalMark,
): Bounded | undefined | Issue {
  if (opposite || ASKS_FOR_TOO_MUCH.test(folded(header).replace(/\s+/g, " "))) {
    const tooMuch = answer(cell, opposite);
    if (typeof tooMuch === "boolean") return { value: FOAM_LIMIT, than: tooMuch ? "more" : "less" };
  }
  const divisions = boundedFromCell(cell, (number) => countFromCell(number, DIVISIONS, decimal));
  if (isIssue(divisions)) {
    const some = answer(cell, opposite);
    return some === true ? leftOpen(cell) : some === false ? { value: 0 } : (some ?? divisions);
  }
  if (divisions === undefined) return undefined;
  return isOver(divisions, FOAM_LIMIT) === undefined ? leftOpen(cell) : divisions;
}

/** A cell that is no number as a yes or a no to a fault; `undefined` for anything else. */
function answer(cell: CellValue, opposite: boolean): boolean | Issue | undefined {
  const isAnswer = typeof cell === "boolean" || (typeof cell === "string" && !/\d/.test(cell));
  const read = isAnswer ? faultFromCell(cell, { opposite }) : undefined;
  return isIssue(read) && read.id !== "tick-is-unclear" ? undefined : read;
}

function leftOpen(cell: CellValue): Issue {
  return issue("bound-leaves-open", { value: quoted(cell), limit: FOAM_LIMIT });
}
