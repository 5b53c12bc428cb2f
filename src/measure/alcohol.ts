import { isBlank, quoted, type CellValue } from "./cell-value";
import { issue, isIssue, type Issue } from "./issue";
import { numberFromCell, type DecimalMark } from "./number-from-cell";

/** Units in which a lab writes down alcohol, as far as the correction table has a column for them. */
export type WrittenAlcoholUnit = "pt" | "oz" | "L" | "mL";

/** An amount of alcohol as written, in a unit that the correction table has a column for. */
export interface WrittenAlcohol {
  readonly amount: number;
  readonly unit: Exclude<WrittenAlcoholUnit, "mL">;
}

const SPELLINGS: Readonly<Record<WrittenAlcoholUnit, readonly string[]>> = {
  pt: ["pt", "pts", "pint", "pints", "us pt"],
  oz: ["oz", "ozs", "fl oz", "floz", "ounce", "ounces", "fluid ounce", "fluid ounces", "us fl oz"],
  L: ["l", "liter", "liters", "litre", "litres", "ltr"],
  mL: ["ml", "milliliter", "milliliters", "millilitre", "millilitres", "cc", "cm3", "cm³"],
};
const UNIT_OF = new Map(
  Object.entries(SPELLINGS).flatMap(([unit, words]) =>
    words.map((word) => [word, unit as WrittenAlcoholUnit] as const),
  ),
);
const AMOUNT_AND_UNIT = /^([^a-zA-Z]*[\d%¼½¾.])\s*([a-zA-Z][a-zA-Z3³. ]*)$/;

/** The unit that a word stands for, or `undefined` where it is not a unit of alcohol we know. */
export function alcoholUnitNamed(word: string): WrittenAlcoholUnit | undefined {
  const plain = () => word.toLowerCase().replace(/\./g, "").replace(/\s+/g, " ").trim();
  return UNIT_OF.get(word) ?? UNIT_OF.get(plain());
}

/**
 * Reads an amount of alcohol.
 *
 * @param value A number, or a text with its unit: "48 oz", "1.4 L", "2 1/2 pt".
 * @param unit Unit of a number without one: from the unit argument or the column's header.
 * @param decimal "," where decimals are written with a comma.
 * @returns Amount and unit, millilitres as litres; `undefined` for a blank. 0 needs no unit. The issue
 *   `alcohol-not-an-amount`, `alcohol-has-no-unit`, `alcohol-unit-unknown`, or one of `numberFromCell`.
 */
export function alcoholFromCell(
  value: CellValue,
  unit?: string,
  decimal: DecimalMark = ".",
): WrittenAlcohol | undefined | Issue {
  if (isBlank(value)) return undefined;
  const split = typeof value === "string" ? AMOUNT_AND_UNIT.exec(value.trim()) : null;
  const amount = numberFromCell(split ? split[1]! : value, decimal);
  if (isIssue(amount)) {
    const odd = !split && amount.id === "not-a-number";
    return odd ? issue("alcohol-not-an-amount", { value: quoted(value) }) : amount;
  }
  if (amount === undefined) return undefined;
  const word = split?.[2] ?? unit;
  if (word === undefined || isBlank(word)) {
    return amount === 0
      ? { amount, unit: "pt" }
      : issue("alcohol-has-no-unit", { value: quoted(value) });
  }
  const named = alcoholUnitNamed(word);
  if (!named) return issue("alcohol-unit-unknown", { value: quoted(word) });
  return named === "mL" ? { amount: amount / 1000, unit: "L" } : { amount, unit: named };
}
