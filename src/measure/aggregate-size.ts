import { isBlank, quoted, type CellValue } from "./cell-value";
import { issue, isIssue, type Issue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { implausible, QUANTITIES } from "./plausible";
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
 *   `undefined` for a blank. The issue `size-looks-like-date`, `aggregate-size-cannot-be`, or one of
 *   `numberFromCell` and `implausible`.
 */
export function aggregateSizeFromCell(
  value: CellValue,
  system: UnitSystem,
  decimal: DecimalMark = ".",
): AggregateSize | undefined | Issue {
  if (isBlank(value)) return undefined;
  const written = typeof value === "string" ? value.trim().replace("⅜", " 3/8") : value;
  const split = typeof written === "string" ? SIZE_AND_UNIT.exec(written) : null;
  const size = numberFromCell(split ? split[1]! : written, decimal);
  if (isIssue(size)) {
    const odd = size.id === "not-a-number";
    return odd
      ? issue("aggregate-size-cannot-be", { value: quoted(split ? split[1]! : written) })
      : size;
  }
  if (size === undefined) return undefined;
  if (!split && size >= FIRST_DAY_NUMBER) return issue("size-looks-like-date", { value: size });
  const named = split && (split[2]!.toLowerCase().startsWith("m") ? "si" : "us");
  const of = named ?? system;
  const unit = of === "si" ? "mm" : "in";
  return implausible(size, QUANTITIES.aggregateSize, of) ?? { size, unit };
}
