import type { UnitSystem } from "../../measure/unit-system";

/**
 * Between which temperatures fresh concrete is placed where nothing is specified, °F and °C: above,
 * hot weather (from memory, ACI 305.1); below, the thickest sections in cold weather (from memory,
 * ASTM C94). The pairs are the standards' own.
 */
export const USUAL_TEMPERATURES: Readonly<
  Record<UnitSystem, { readonly low: number; readonly high: number }>
> = {
  us: { low: 40, high: 95 },
  si: { low: 5, high: 35 },
};
