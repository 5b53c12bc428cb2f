import { isBlank, quoted, writtenIn, type CellValue } from "./cell-value";
import { issue, isIssue, type Issue } from "./issue";
import { phrase } from "../messages/catalogue";
import type { Value, Values } from "../messages/sentence";
import { numberFromCell, type DecimalMark } from "./number-from-cell";
import { saysNone, spelledNumber } from "./spelled-number";

/** Units in which the correction table has a column. */
type TableUnit = "pt" | "oz" | "L";

/** Units in which a lab writes down alcohol, exact multiples of those of the correction table among them. */
type WrittenAlcoholUnit = TableUnit | "mL" | "cL" | "dL" | "qt";

/** An amount of alcohol as written, in a unit that the correction table has a column for. */
export interface WrittenAlcohol {
  readonly amount: number;
  readonly unit: TableUnit;
}

const SPELLINGS: Readonly<Record<WrittenAlcoholUnit, readonly string[]>> = {
  pt: [
    ...["pt", "pts", "pint", "pints", "us pt", "us pint", "us pints"],
    ...["pinta", "pintas", "pinte", "pintes"],
  ],
  oz: [
    ...["oz", "ozs", "fl oz", "floz", "ounce", "ounces", "fluid ounce", "fluid ounces", "us fl oz"],
    ...["onza", "onzas", "once", "onces", "unze", "unzen"],
  ],
  L: ["l", "lt", "liter", "liters", "litre", "litres", "ltr", "litro", "litros", "litern"],
  mL: [
    ...["ml", "milliliter", "milliliters", "millilitre", "millilitres", "cc", "cm3", "cm³"],
    ...["mililitro", "mililitros"],
  ],
  cL: ["cl", "centiliter", "centilitre", "centilitres", "centilitro", "centilitros", "zentiliter"],
  dL: ["dl", "deciliter", "decilitre", "decilitres", "decilitro", "decilitros", "deziliter"],
  qt: ["qt", "qts", "quart", "quarts", "us qt", "us quart", "us quarts"],
};
/** In a unit of the table: so many of the one are one of the other. */
const OF_THE_TABLE: Readonly<
  Record<
    WrittenAlcoholUnit,
    { readonly unit: TableUnit; readonly times?: number; readonly over?: number }
  >
> = {
  pt: { unit: "pt" },
  oz: { unit: "oz" },
  L: { unit: "L" },
  mL: { unit: "L", over: 1000 },
  cL: { unit: "L", over: 100 },
  dL: { unit: "L", over: 10 },
  qt: { unit: "pt", times: 2 },
};
const UNIT_OF = new Map(
  Object.entries(SPELLINGS).flatMap(([unit, words]) =>
    words.map((word) => [word, unit as WrittenAlcoholUnit] as const),
  ),
);
/** What was measured, behind an amount or after "no"; it goes without saying. */
const THE_ALCOHOL =
  /\s*\b(?:of |de |d'|d’)?(?:ipa|isopropyl(?: alcohol)?|isopropanol|rubbing alcohol|alcohol|alcool|alkohol)\.?$/i;
const SPELLED_AND_UNIT = /^(\p{L}+)\s+(\p{L}[\p{L}. ]*)$/u;

/** Numbers of millilitres that people use; as litres they would be more than any meter holds. */
const MILLILITRES = [100, 5000] as const;

const AMOUNT_AND_UNIT = /^([^a-zA-Z]*[\d%¼½¾.])\s*([a-zA-Z][a-zA-Z3³. ]*)$/;

/** The unit that a word stands for, or `undefined` where it is not a unit of alcohol we know. */
export function alcoholUnitNamed(word: string): WrittenAlcoholUnit | undefined {
  const plain = () => word.toLowerCase().replace(/\./g, "").replace(/\s+/g, " ").trim();
  return UNIT_OF.get(word) ?? UNIT_OF.get(plain());
}

/**
 * Reads an amount of alcohol.
 *
 * @param value A number, or a text with its unit: "48 oz", "1.4 L", "2 1/2 pt", "3 pt IPA", "none".
 * @param unit Unit of a number without one: from the unit argument or the column's header.
 * @param decimal "," where decimals are written with a comma.
 * @returns Amount and unit, quarts as pints and parts of a litre as litres; `undefined` for a blank. 0 needs no unit. The issue
 *   `alcohol-not-an-amount`, `alcohol-has-no-unit`, `alcohol-unit-unknown`, `two-ways` for 1400 in a column of
 *   litres, or one of `numberFromCell`.
 */
export function alcoholFromCell(
  value: CellValue,
  unit?: string,
  decimal: DecimalMark = ".",
): WrittenAlcohol | undefined | Issue {
  if (isBlank(value)) return undefined;
  const written = typeof value === "string" ? writtenIn(value).replace(THE_ALCOHOL, "") : value;
  if (typeof written === "string" && saysNone(written)) return { amount: 0, unit: "pt" };
  const split = typeof written === "string" ? AMOUNT_AND_UNIT.exec(spelledOut(written)) : null;
  const amount = numberFromCell(split ? split[1]! : written, decimal);
  if (isIssue(amount)) return withUnit(amount, value, split?.[2]);
  if (amount === undefined) return issue("alcohol-not-an-amount", { value: quoted(value) });
  const word = split?.[2] ?? unit;
  if (word === undefined || isBlank(word)) {
    return amount === 0
      ? { amount, unit: "pt" }
      : issue("alcohol-has-no-unit", { value: quoted(value) });
  }
  const named = alcoholUnitNamed(word);
  if (!named) return issue("alcohol-unit-unknown", { value: quoted(word) });
  if (named === "L" && !split && amount >= MILLILITRES[0] && amount <= MILLILITRES[1])
    return issue("two-ways", {
      value: amount,
      one: inUnit(amount, "L"),
      other: inUnit(amount, "mL"),
    });
  const { unit: inTable, times = 1, over = 1 } = OF_THE_TABLE[named];
  return { amount: (amount * times) / over, unit: inTable };
}

/** "two pints" as "2 pints". */
function spelledOut(written: string): string {
  const [, word, rest] = SPELLED_AND_UNIT.exec(written) ?? [];
  const number = word === undefined ? undefined : spelledNumber(word);
  return number === undefined ? written : `${number} ${rest}`;
}

/** Why an amount cannot be read, said of the whole cell. */
function withUnit(why: Issue, value: CellValue, unit?: string): Issue {
  if (why.id === "not-a-number" && !unit)
    return issue("alcohol-not-an-amount", { value: quoted(value) });
  if (why.id !== "two-ways" || !unit) return why;
  const { one, other } = why.values as Values<"one" | "other">;
  return issue("two-ways", {
    value: quoted(value),
    one: inUnit(one, unit),
    other: inUnit(other, unit),
  });
}

function inUnit(amount: Value, unit: string): Value {
  return phrase("amount-in-unit", { amount, unit });
}
