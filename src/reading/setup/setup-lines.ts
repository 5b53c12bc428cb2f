import { isBlank, type CellValue } from "../../measure/cell-value";
import { partsHeaded, type HeadedParts, type Parts } from "./parts";

/** A line of a setup that holds something, with the headings that hold for it. */
export interface SetupLine {
  /** Position in the cells, from 0. */
  readonly at: number;
  readonly row: readonly CellValue[];
  /** The headings that were passed last. */
  readonly parts: Parts;
  /** Where the line is itself one of headings. */
  readonly headed?: HeadedParts;
}

/** The lines of a setup, without blank ones and titles. */
export function* setupLines(cells: readonly (readonly CellValue[])[]): Generator<SetupLine> {
  let parts: Parts = {};
  for (const [at, row] of cells.entries()) {
    if (row.every(isBlank)) continue;
    const headed = partsHeaded(row);
    if (headed) {
      parts = headed;
      yield { at, row, parts, headed };
    } else if (!isTitle(cells, at)) yield { at, row, parts };
  }
}

/** A single cell right above a row of headings is its title. */
function isTitle(cells: readonly (readonly CellValue[])[], at: number): boolean {
  if (cells[at]!.filter((cell) => !isBlank(cell)).length > 1) return false;
  let below = at + 1;
  while (cells[below]?.every(isBlank)) below++;
  const next = cells[below];
  return next !== undefined && partsHeaded(next) !== undefined;
}
