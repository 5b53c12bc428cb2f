import { isBlank, shownValue, type CellValue } from "./cell-value";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { plausible, QUANTITIES } from "./plausible";
import { Problem } from "./problem";
import type { UnitSystem } from "./unit-system";

/** A nominal maximum size of aggregate in the unit that it was given in. */
export interface AggregateSize {
  readonly size: number;
  readonly unit: "in" | "mm";
}

const SIZE_AND_UNIT = /^(.*[\d¼½¾⅜.])[\s-]*(in|in\.|inch|inches|"|”|″|mm|millimet(?:er|re)s?)$/i;

/** From here on a number without a unit is a day of the calendar, which Excel makes out of 3/4. */
const FIRST_DAY_NUMBER = 10_000;

/**
 * Reads a nominal maximum aggregate size as people write it: 0.75, "3/4", "3/4 in", "19 mm", "1 1/2".
 *
 * @param value Cell value.
 * @param system Says the unit of a size without one: inches or millimetres.
 * @returns The size in its own unit: sizes of the two systems are pairs of names, not conversions.
 *   `undefined` for a blank.
 * @throws Problem `size-looks-like-date`, `aggregate-size-cannot-be`, the others of `numberFromCell`
 *   and those of `plausible`.
 */
export function aggregateSizeFromCell(
  value: CellValue,
  system: UnitSystem,
  decimal: DecimalMark = ".",
): AggregateSize | undefined {
  if (isBlank(value)) return undefined;
  const written = typeof value === "string" ? value.trim().replace("⅜", " 3/8") : value;
  const split = typeof written === "string" ? SIZE_AND_UNIT.exec(written) : null;
  if (split) {
    const unit = split[2]!.toLowerCase().startsWith("m") ? "mm" : "in";
    const size = sizeFrom(split[1]!, decimal);
    return { size: plausible(size, QUANTITIES.aggregateSize, unit === "mm" ? "si" : "us"), unit };
  }
  const size = sizeFrom(written, decimal);
  if (size >= FIRST_DAY_NUMBER) throw new Problem("size-looks-like-date", { value: size });
  plausible(size, QUANTITIES.aggregateSize, system);
  return { size, unit: system === "si" ? "mm" : "in" };
}

function sizeFrom(written: CellValue, decimal: DecimalMark): number {
  try {
    return numberFromCell(written, decimal)!;
  } catch (problem) {
    if (!(problem instanceof Problem) || problem.id !== "not-a-number") throw problem;
    throw new Problem("aggregate-size-cannot-be", { value: shownValue(written) });
  }
}
