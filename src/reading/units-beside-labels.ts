import { isBlank, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import type { Cells } from "./labelled-value";
import { isLabelText } from "./labels";
import { isBlankOrWords, unitIn } from "./units-row";

/** Fewer may be values of a form: "Alcohol unit", oz. */
const FEWEST_UNITS = 3;
/** A longer text is nothing that stands beside a unit. */
const LONGEST_COUNTED = 12;
/** What stands for a unit where there is none: "No.", "#", "Y/N", "hh:mm", "cups"; any other word is an answer. */
const COUNTED =
  /^(?:n[or]\.|n[°º]\.?|#|num\.?|ea\.?|each|count|mins?\.?|rolls?|vueltas?|tours?|anz\.?|anzahl|stk?\.?|u\.|c\/u|y\/n|yes\/no|s\/n|si\/no|o\/n|oui\/non|j\/n|ja\/nein|h{1,2}[:h]m{2}|dd?[./-]mm?[./-]y{2,4}|cups?|copas?|vasos?|tazas?|godets?|tasses?|(?:mess)?becher)$/;
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
      if (typeof unit !== "string" || !isUnitOrMark(unit, row[at + 1])) continue;
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

/** An answer that stands among the units, "Leak", "yes", stays where it is. */
function isUnitOrMark(text: string, behind: CellValue | undefined): boolean {
  const mark = folded(text.trim());
  const isNumberSign = (mark === "no" || mark === "nr") && typeof behind === "number";
  return (
    isBlank(text) ||
    unitIn(text) !== undefined ||
    isHead(text) ||
    isNumberSign ||
    COUNTED.test(mark)
  );
}

function isHead(text: string): boolean {
  return HEADS_UNITS.test(folded(text).trim());
}

function hasNumber(row: readonly CellValue[], from: number): boolean {
  return row.some((cell, at) => at >= from && !isBlank(cell) && !isBlankOrWords(cell));
}
