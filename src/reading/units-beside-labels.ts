import { isBlank, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import type { Cells } from "./labelled-value";
import { isLabelText } from "./labels";
import { isBlankOrWords, unitIn } from "./units-row";

/** Fewer may be values of a form: "Alcohol unit", oz. */
const FEWEST_UNITS = 3;
/** What is counted, where other labels have a unit. */
const LONGEST_COUNTED = 12;
/** What heads a column of units, in the languages that are read. */
const HEADS_UNITS = /^(?:units?|unidad(?:es)?|unites?|einheit(?:en)?|u\.? ?m\.?)$/;

/**
 * A block of a form whose labels have their units in a column of their own, "Slump", "in", 4, with each unit in
 * brackets behind its label and the column blank; the block itself where it has none.
 */
export function withUnitsInLabels(block: Cells): Cells {
  const width = block[0]?.length ?? 0;
  const columns: number[] = [];
  for (let at = 1; at < width; at++) {
    if (!columns.includes(at - 1) && isOfUnits(block, at)) columns.push(at);
  }
  if (columns.length === 0) return block;
  return block.map((row) => {
    const cells = [...row];
    for (const at of columns) {
      const [label, unit] = [cells[at - 1], cells[at]];
      if (typeof unit !== "string") continue;
      if (isLabelText(label) && !isHead(unit)) cells[at - 1] = `${label.trim()} (${unit.trim()})`;
      cells[at] = null;
    }
    return cells;
  });
}

/** Whether a column holds the units of the labels at its left, and values stand behind it. */
function isOfUnits(block: Cells, at: number): boolean {
  let units = 0;
  let others = 0;
  let values = 0;
  for (const row of block) {
    const cell = row[at] ?? null;
    if (isBlank(cell)) continue;
    const label = row[at - 1];
    if (!isBlankOrWords(cell) || !isLabelText(label)) return false;
    const text = String(cell);
    if (unitIn(text) !== undefined) {
      units++;
      if (hasNumber(row, at + 1)) values++;
    } else if (text.trim().length > LONGEST_COUNTED || /\d/.test(text)) return false;
    else if (!isHead(text)) others++;
  }
  return units >= FEWEST_UNITS && units > others && values * 2 >= units;
}

function isHead(text: string): boolean {
  return HEADS_UNITS.test(folded(text).trim());
}

function hasNumber(row: readonly CellValue[], from: number): boolean {
  return row.some((cell, at) => at >= from && !isBlank(cell) && !isBlankOrWords(cell));
}
