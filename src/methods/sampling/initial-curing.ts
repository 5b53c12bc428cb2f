import type { UnitSystem } from "../../measure/unit-system";

/** From this specified strength on the narrower range holds: psi, MPa (a forum quoting ASTM C31). */
export const NARROW_FROM: Readonly<Record<UnitSystem, number>> = { us: 6000, si: 40 };

/** Between which temperatures specimens are cured at first, °F or °C. */
export interface CuringRange {
  readonly low: number;
  readonly high: number;
}

const USUAL: Readonly<Record<UnitSystem, CuringRange>> = {
  us: { low: 60, high: 80 },
  si: { low: 16, high: 27 },
};
const NARROW: Readonly<Record<UnitSystem, CuringRange>> = {
  us: { low: 68, high: 78 },
  si: { low: 20, high: 26 },
};

/**
 * The temperatures of initial curing, up to 48 hours.
 *
 * @param highStrength Whether the specified strength is `NARROW_FROM` or more.
 * @see ASTM C31 as a forum, a code body's question and answer and an exam page quote it; the pairs are its own.
 */
export function initialCuring(highStrength: boolean, system: UnitSystem): CuringRange {
  return (highStrength ? NARROW : USUAL)[system];
}
