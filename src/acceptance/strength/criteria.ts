import type { UnitSystem } from "../../measure/unit-system";

/** Specified strength above which the allowance for one test is a share of it: psi, MPa. */
export const HIGH_STRENGTH_ABOVE: Readonly<Record<UnitSystem, number>> = { us: 5000, si: 35 };

/** How far one test may fall below the specified strength: psi, MPa. */
export const ALLOWANCE: Readonly<Record<UnitSystem, number>> = { us: 500, si: 3.5 };

/** What one test of high-strength concrete must reach, as a share of the specified strength. */
export const HIGH_STRENGTH_SHARE = 0.9;

/**
 * The least strength that a single test may have.
 *
 * @param specified Specified strength, psi or MPa.
 * @see ACI 318-19, 26.12.3.1 (trade articles quoting it); the MPa values from memory, ACI 318M-19.
 */
export function leastSingleTest(specified: number, system: UnitSystem): number {
  return specified > HIGH_STRENGTH_ABOVE[system]
    ? HIGH_STRENGTH_SHARE * specified
    : specified - ALLOWANCE[system];
}
