import { isBlank, type CellValue } from "../measure/cell-value";

const SUMS_UP =
  /^(?:(?:grand |sub-?)?totals?|sum|averages?|avg|mean|min(?:imum)?|max(?:imum)?|count|range|st(?:andar)?d\.? ?dev(?:iation)?)[.:]?$/i;

/** Whether a row sums up the tests above it: it begins with a word such as "Average" or "Total". */
export function isSummaryRow(row: readonly CellValue[]): boolean {
  const first = row.find((cell) => !isBlank(cell));
  return typeof first === "string" && SUMS_UP.test(first.trim());
}
