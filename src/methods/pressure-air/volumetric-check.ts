import type { UnitSystem } from "../../measure/unit-system";

/** From this aggregate correction factor on, %, a volumetric test verifies the pressure meter (Kansas DOT KT-18). */
export const FACTOR_TO_VERIFY = 0.8;

/** Up to this slump a volumetric test may be asked for (Kansas DOT KT-18; 50 mm is our own pair). */
export const SLUMP_MAY_VERIFY: Readonly<Record<UnitSystem, number>> = { us: 2, si: 50 };

/** Whether a volumetric test verifies a result of the pressure method, or may be asked for to. */
export type VolumetricCheck = "due" | "may be due" | "not due";

/**
 * Whether a result of the pressure method is verified by the volumetric method.
 *
 * @param factor Aggregate correction factor, %.
 * @param slump Slump, in or mm; not looked at when absent.
 * @see Kansas DOT KT-18: from a factor of 0.8 % on it is, with a slump up to 2 in it may be.
 */
export function volumetricCheck(
  factor: number | undefined,
  slump: number | undefined,
  system: UnitSystem,
): VolumetricCheck {
  if (factor !== undefined && factor >= FACTOR_TO_VERIFY) return "due";
  return slump !== undefined && slump <= SLUMP_MAY_VERIFY[system] ? "may be due" : "not due";
}
