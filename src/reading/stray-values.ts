import { isBlank, type CellValue } from "../measure/cell-value";
import { yesOrNoFromCell } from "../measure/words-from-cell";
import type { BlockPlace } from "./block-place";
import { kindOf, textOf } from "./evidence";
import { isLine } from "./labels";
import type { Cells, LabelledValue } from "./labelled-value";
import { testersWordIn } from "./testers-word";

/**
 * Numbers, ticks and words of a void test without a label, which are not passed over.
 *
 * @param titles Places of titles, which are no values.
 */
export function strayValues(
  block: Cells,
  pairs: readonly LabelledValue[],
  titles: readonly BlockPlace[],
): LabelledValue[] {
  const nameOf = ({ row, column }: BlockPlace) => `${row} ${column}`;
  const used = new Set(
    [...titles, ...pairs.flatMap(({ label, value }) => [label, value])].map(nameOf),
  );
  const labels = new Set(pairs.map(({ label }) => nameOf(label)));
  const isLineNumber = lineNumbersIn(block, (place) => labels.has(nameOf(place)));
  return block.flatMap((cells, row) =>
    cells.flatMap((cell, column): LabelledValue[] => {
      const place = { row, column };
      if (isLineNumber(column) && labels.has(nameOf({ row, column: column + 1 }))) return [];
      if (isBlank(cell) || used.has(nameOf(place)) || !saysSomething(cell)) return [];
      const key = `stray ${nameOf(place)}`;
      return [{ text: "", titles: [], key, label: place, value: place, stray: true }];
    }),
  );
}

/** Says which columns hold nothing but numbers that rise by one from label to label to their right. */
function lineNumbersIn(
  block: Cells,
  isLabel: (place: BlockPlace) => boolean,
): (column: number) => boolean {
  const columns = (block[0] ?? []).map((_, column) => {
    const numbers = block.flatMap((cells, row) =>
      isLabel({ row, column: column + 1 }) && !isBlank(cells[column])
        ? [Number(cells[column])]
        : [],
    );
    return numbers.length > 2 && numbers.every((number, i) => number === numbers[0]! + i);
  });
  return (column) => columns[column] ?? false;
}

const wordIn = testersWordIn("");

function saysSomething(cell: CellValue): boolean {
  if (typeof cell !== "string") return true;
  const kind = kindOf(cell, textOf(cell));
  if (kind === "number" || kind === "amount") return true;
  if (typeof yesOrNoFromCell(cell) === "boolean") return true;
  return wordIn(cell)?.says === "void" || (!isLine(cell) && wordIn(cell) !== undefined);
}
