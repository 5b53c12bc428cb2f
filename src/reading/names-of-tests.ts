import { isBlank } from "../measure/cell-value";
import { labelledValue, type Cells, type LabelledValue } from "./labelled-value";
import { isLabelText } from "./labels";

/**
 * The names above columns of tests, as of their samples: the texts of the lowest row above the readings
 * that has a different one over each test and none over the labels. None where labels name the samples or
 * loads.
 */
export function namesOfTests(
  block: Cells,
  pairs: readonly LabelledValue[],
  tests: ReadonlyMap<number, readonly number[]>,
): readonly LabelledValue[] {
  if (pairs.some(({ field }) => field === "sample" || field === "load")) return [];
  return [...tests].flatMap(([labels, columns]) => {
    const first = block.findIndex(
      (cells) => isLabelText(cells[labels]) && !isBlank(cells[columns[0]!]),
    );
    for (let row = first - 1; row >= 0; row--) {
      const cells = block[row]!;
      const names = columns.map((at) => cells[at]);
      const isOfAll = isBlank(cells[labels]) && names.every(isLabelText);
      if (!isOfAll || new Set(names).size < names.length) continue;
      return columns.map((at) =>
        labelledValue("Sample", { row, column: labels }, { row, column: at }),
      );
    }
    return [];
  });
}
