import type { DecimalMark } from "../../measure/number-from-cell";
import type { FunctionHelp } from "./function-help";

const NUMBER = /^-?\d*\.\d+$/;

/** A formula as files and programs have it, in English: "=FRESH.AIR(6,0,"48 oz")". */
export function formulaOf({ name, example }: FunctionHelp): string {
  return `=FRESH.${name}(${example.join(",")})`;
}

/**
 * The same as people type it: where the comma is the decimal mark, spreadsheets set arguments off by
 * semicolons.
 */
export function shownFormula({ name, example }: FunctionHelp, decimal: DecimalMark): string {
  if (decimal === ".") return `=FRESH.${name}(${example.join(", ")})`;
  const args = example.map((each) => (NUMBER.test(each) ? each.replace(".", ",") : each));
  return `=FRESH.${name}(${args.join("; ")})`;
}
