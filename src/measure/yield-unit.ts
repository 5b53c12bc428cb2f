import { cellErrorIssue } from "./cell-error-issue";
import { isCellError, quoted, shownValue, type CellValue } from "./cell-value";
import { issue, type Issue } from "./issue";

/** Units in which the yield of a batch is given. */
export type YieldUnit = "ft3" | "yd3" | "m3";

const SPELLINGS: Readonly<Record<YieldUnit, readonly string[]>> = {
  ft3: ["ft3", "ft³", "ft^3", "cu ft", "cf", "us"],
  yd3: ["yd3", "yd³", "yd^3", "cu yd", "cy"],
  m3: ["m3", "m³", "m^3", "cu m", "si"],
};

/** Reads a unit of yield; a system of units stands for its plain one. Else the issue `yield-unit-unknown` or `cell-error`. */
export function yieldUnitFromCell(value: CellValue): YieldUnit | Issue {
  if (isCellError(value)) return cellErrorIssue(value);
  const word = shownValue(value).trim().toLowerCase().replace(/\./g, "");
  for (const unit of ["ft3", "yd3", "m3"] as const) {
    if (SPELLINGS[unit].includes(word)) return unit;
  }
  return issue("yield-unit-unknown", { value: quoted(value) });
}
