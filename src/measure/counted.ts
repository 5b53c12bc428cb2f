import { isBlank, quoted, type CellValue } from "./cell-value";
import { folded } from "./folded";
import { Issue, isIssue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { spelledNumber } from "./spelled-number";

/** What the cells of a column count, as people name it behind the number or after "no"; folded. */
export interface Counted {
  readonly noun: RegExp;
}

/** Calibrated cups of water. */
export const CUPS: Counted = {
  noun: /(?:^|\s|(?<=\d))(?:calibrated |full )?(?:cups?|vasos?|tazas?|gobelets?|godets?|tasses?|(?:mess)?bechern?)(?: (?:of water|de agua|d'eau|wasser))?$/,
};

/** Divisions of the neck with foam on it. */
export const DIVISIONS: Counted = {
  noun: /(?:^|\s|(?<=\d))(?:(?:full )?(?:divs?|divisions?|divisiones|teilstriche?n?|graduations?|graduaciones)\.?|foam|espuma|(?:de )?mousse|schaum)$/,
};

/**
 * Reads a number with or without the word for what it counts: 2, "2 cups", "two cups of water", "none",
 * "no foam".
 *
 * @returns The number; `undefined` for a blank; an issue of `numberFromCell`.
 */
export function countFromCell(
  value: CellValue,
  { noun }: Counted,
  decimal: DecimalMark = ".",
): number | undefined | Issue {
  if (typeof value !== "string" || isBlank(value)) return numberFromCell(value, decimal);
  const plain = numberFromCell(value, decimal);
  if (!isIssue(plain) || plain.id !== "not-a-number") return plain;
  const written = value.trim();
  const found = noun.exec(folded(written));
  const number = found ? written.slice(0, found.index).trim() : written;
  const spelled = spelledNumber(number);
  if (spelled !== undefined) return spelled;
  const read = found && number !== "" ? numberFromCell(number, decimal) : plain;
  if (!isIssue(read)) return read;
  return new Issue(read.id, { ...read.values, value: quoted(value) });
}
