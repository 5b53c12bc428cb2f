import type { UnitSystem } from "../../measure/unit-system";

/** From this aggregate correction factor on, %, a volumetric test verifies the pressure meter. */
export const FACTOR_TO_VERIFY = 0.8;

/** Up to this slump a volumetric test verifies the pressure meter. */
export const SLUMP_TO_VERIFY: Readonly<Record<UnitSystem, number>> = { us: 2, si: 50 };

/**
 * Whether a result of the pressure method should be verified by the volumetric method.
 *
 * @param factor Aggregate correction factor, %.
 * @param slump Slump, in or mm; not looked at when absent.
 * @see Kansas DOT KT-18; the millimetres are our own pair of the 2 in.
 */
export function asksForVolumetricCheck(
  factor: number | undefined,
  slump: number | undefined,
  system: UnitSystem,
): boolean {
  const muchFactor = factor !== undefined && factor >= FACTOR_TO_VERIFY;
  const stiff = slump !== undefined && slump <= SLUMP_TO_VERIFY[system];
  return muchFactor || stiff;
}
