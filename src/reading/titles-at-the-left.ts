import { isBlank } from "../measure/cell-value";
import type { Cells } from "./labelled-value";
import { fieldSaidBy, isKnownLabel, isLabelText } from "./labels";

/** Fewer labels beside a column make no groups of it. */
const ENOUGH = 3;

/**
 * Titles of groups down the left of a form, each beside the first of its labels: "Air" beside "Reading 1",
 * which has its value to the right.
 *
 * @returns For a row and a column the title to whose group a label there belongs.
 */
export function titlesAtTheLeft(
  block: Cells,
): ReadonlyMap<number, ReadonlyMap<number, string | undefined>> {
  const width = block[0]?.length ?? 0;
  const titles = new Map<number, ReadonlyMap<number, string | undefined>>();
  for (let column = 0; column + 2 < width; column++) {
    const isLabelled = (cells: Cells[number]) =>
      fieldSaidBy(cells[column + 1]) !== undefined &&
      !isBlank(cells[column + 2]) &&
      !isKnownLabel(cells[column + 2]);
    const labelled = block.filter(isLabelled);
    const besideTitles = labelled.filter((cells) => isLabelText(cells[column]));
    const besideBlanks = labelled.filter((cells) => isBlank(cells[column]));
    const others = labelled.length - besideTitles.length - besideBlanks.length;
    if (labelled.length < ENOUGH || besideTitles.length === 0 || others > 0) continue;
    // Where every label has a text to its left, the texts are values of labels further left.
    if (besideBlanks.length === 0 && besideTitles.length > 2) continue;
    titles.set(column, titlesByRow(block, column));
  }
  return titles;
}

function titlesByRow(block: Cells, column: number): ReadonlyMap<number, string | undefined> {
  const byRow = new Map<number, string | undefined>();
  let title: string | undefined;
  for (const [row, cells] of block.entries()) {
    const [cell, label, value] = [cells[column], cells[column + 1], cells[column + 2]];
    if (isLabelText(cell)) title = cell.trim().replace(/\s*:$/, "");
    else if (cells.every(isBlank)) title = undefined;
    if (isLabelText(label) && !isBlank(value)) byRow.set(row, title);
  }
  return byRow;
}
