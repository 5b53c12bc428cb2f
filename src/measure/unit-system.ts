import { shownValue, type CellValue } from "./cell-value";
import { Problem } from "./problem";

/** "us" is inch-pound, "si" is metric. Results never mix the two. */
export type UnitSystem = "us" | "si";

/** The system where nothing is said. */
export const USUAL_SYSTEM: UnitSystem = "us";

/** The other system. */
export function otherSystem(system: UnitSystem): UnitSystem {
  return system === "us" ? "si" : "us";
}

/**
 * Reads the name of a system of units.
 *
 * @throws Problem `system-unknown`.
 */
export function unitSystemFromCell(value: CellValue): UnitSystem {
  const named = shownValue(value).trim().toLowerCase();
  if (named === "us" || named === "si") return named;
  throw new Problem("system-unknown", { value: shownValue(value) });
}
