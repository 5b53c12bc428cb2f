import { isBlank, shownValue, type CellValue } from "./cell-value";
import { numberFromCell, numberFromText, type DecimalMark } from "./number-from-cell";
import { Problem } from "./problem";

/** Units in which a lab writes down alcohol, as far as the correction table has a column for them. */
export type WrittenAlcoholUnit = "pt" | "oz" | "L" | "mL";

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
  return UNIT_OF.get(word.toLowerCase().replace(/\./g, "").replace(/\s+/g, " ").trim());
}

/**
 * Reads an amount of alcohol.
 *
 * @param value A number, or a text with its unit: "48 oz", "1.4 L", "2 1/2 pt".
 * @param unit Unit of a number without one: from the unit argument or the column's header.
 * @param decimal "," where decimals are written with a comma.
 * @returns Amount and unit, millilitres as litres; `undefined` for a blank. 0 needs no unit.
 * @throws Problem `alcohol-not-an-amount`, `alcohol-has-no-unit`, `alcohol-unit-unknown`, and those of
 *   `numberFromCell`.
 */
export function alcoholFromCell(
  value: CellValue,
  unit?: string,
  decimal: DecimalMark = ".",
): { readonly amount: number; readonly unit: "pt" | "oz" | "L" } | undefined {
  if (isBlank(value)) return undefined;
  const split = typeof value === "string" ? AMOUNT_AND_UNIT.exec(value.trim()) : null;
  const amount = split ? numberFromText(split[1]!, decimal) : amountFromCell(value, decimal);
  const word = split?.[2] ?? unit;
  if (word === undefined || isBlank(word)) {
    if (amount === 0) return { amount, unit: "pt" };
    throw new Problem("alcohol-has-no-unit", { value: shownValue(value) });
  }
  const named = alcoholUnitNamed(word);
  if (!named) throw new Problem("alcohol-unit-unknown", { value: word });
  return named === "mL" ? { amount: amount / 1000, unit: "L" } : { amount, unit: named };
}

function amountFromCell(value: CellValue, decimal: DecimalMark): number {
  try {
    return numberFromCell(value, decimal)!;
  } catch (problem) {
    if (!(problem instanceof Problem) || problem.id !== "not-a-number") throw problem;
    throw new Problem("alcohol-not-an-amount", problem.values);
  }
}
