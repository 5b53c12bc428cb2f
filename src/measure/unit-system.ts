import { cellErrorIssue } from "./cell-error-issue";
import { isCellError, quoted, shownValue, type CellValue } from "./cell-value";
import { issue, type Issue } from "./issue";

/** "us" is inch-pound, "si" is metric. Results never mix the two. */
export type UnitSystem = "us" | "si";

/** The system where nothing is said. */
export const USUAL_SYSTEM: UnitSystem = "us";

/** The other system. */
export function otherSystem(system: UnitSystem): UnitSystem {
  return system === "us" ? "si" : "us";
}

/** Reads the name of a system of units. The issue `system-unknown` for any other text, or `cell-error`. */
export function unitSystemFromCell(value: CellValue): UnitSystem | Issue {
  if (isCellError(value)) return cellErrorIssue(value);
  const named = shownValue(value).trim().toLowerCase();
  if (named === "us" || named === "si") return named;
  return issue("system-unknown", { value: quoted(value) });
}
