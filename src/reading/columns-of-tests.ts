import type { CellValue } from "../measure/cell-value";
import { READING_FIELDS } from "./fields";
import type { Cells } from "./labelled-value";
import { fieldSaidBy, isLabelText } from "./labels";

/** Whether a cell holds a number, be it as text. */
export function isNumber(cell: CellValue): boolean {
  return (
    typeof cell === "number" || (typeof cell === "string" && /^\s*\d+(?:[.,]\d+)?\s*$/.test(cell))
  );
}

/**
 * For a column of labels the columns of its tests, where a label of a reading has numbers in two
 * columns or more up to the next text.
 */
export function columnsOfTests(block: Cells): ReadonlyMap<number, readonly number[]> {
  const tests = new Map<number, Set<number>>();
  for (const cells of block) {
    for (const [column, cell] of cells.entries()) {
      const field = fieldSaidBy(cell);
      if (!field || !READING_FIELDS.some((reading) => reading === field)) continue;
      const end = cells.findIndex((other, at) => at > column && isLabelText(other));
      const until = end < 0 ? cells.length : end;
      const numbers = [...cells.entries()]
        .filter(([at, value]) => at > column && at < until && isNumber(value))
        .map(([at]) => at);
      if (numbers.length < 2) continue;
      const known = tests.get(column) ?? new Set<number>();
      numbers.forEach((at) => known.add(at));
      tests.set(column, known);
    }
  }
  return new Map([...tests].map(([column, set]) => [column, [...set].sort((a, b) => a - b)]));
}
