import { isBlank, type CellValue } from "../measure/cell-value";
import { cellOf, labelledValue, type Cells, type LabelledValue } from "./labelled-value";
import { isLabelText, nameInTitle, saysNothing } from "./labels";

/**
 * The names above columns of tests, as of their samples: the texts of the lowest row above the readings
 * that has a different one over each test and none over the labels. None where labels name the samples.
 */
export function namesOfTests(
  block: Cells,
  pairs: readonly LabelledValue[],
  tests: ReadonlyMap<number, readonly number[]>,
): readonly LabelledValue[] {
  if (pairs.some(({ field }) => field === "sample")) return [];
  return [...tests].flatMap(([labels, columns]) => {
    const first = block.findIndex(
      (cells) => isLabelText(cells[labels]) && !isBlank(cells[columns[0]!]),
    );
    // "Item", "Unit", "A-1", "A-2": what heads the labels says nothing of the names beside it.
    const isHeaded = first >= 0 && saysNothing(block[first]![labels]);
    for (let row = isHeaded ? first : first - 1; row >= 0; row--) {
      const cells = block[row]!;
      const names = columns.map((at) => cells[at]);
      const isOfAll = (row === first || isBlank(cells[labels])) && names.every(isName);
      if (!isOfAll || new Set(names).size < names.length) continue;
      return columns.map((at) =>
        labelledValue("Sample", { row, column: labels }, { row, column: at }),
      );
    }
    return [];
  });
}

/** What a test may be called: "7-1" is no day there. */
function isName(cell: CellValue | undefined): boolean {
  return (
    isLabelText(cell) || (typeof cell === "string" && /^\s*[\p{L}\d]+-[\p{L}\d]+\s*$/u.test(cell))
  );
}

/**
 * The names in the titles of forms, "Sample A" over the first and "Sample B" over the second, where no label
 * names the samples or loads.
 */
export function withNamesInTitles(
  block: Cells,
  pairs: readonly LabelledValue[],
): readonly LabelledValue[] {
  const isName = ({ field }: LabelledValue) => field === "sample" || field === "load";
  if (pairs.some((pair) => isName(pair) && !isBlank(cellOf(block, pair)))) return pairs;
  const names = block.flatMap((cells, row) =>
    cells.flatMap((cell, column) => {
      const found = nameInTitle(cell);
      return found ? [labelledValue(found.label, { row, column }, { row, column })] : [];
    }),
  );
  const isTitle = ({ label }: LabelledValue) =>
    names.some((name) => name.label.row === label.row && name.label.column === label.column);
  return [...pairs.filter((pair) => !isTitle(pair)), ...names];
}
