import type { UnitSystem } from "../../measure/unit-system";

/** Above this, fresh concrete is hot-weather concrete, °F and °C (ACI 301-20 and ACI 305.1-14, secondary). */
export const HIGHEST: Readonly<Record<UnitSystem, number>> = { us: 95, si: 35 };

/**
 * Least temperature as placed in cold weather, by the least dimension of the section (UFGS 03311): under
 * 12 in, to 36 in, to 72 in, and over. The pairs of temperatures are its own; the dimensions in mm are
 * our own pairs.
 */
export const LEAST_TEMPERATURE_TABLE = [
  { under: { us: 12, si: 300 }, us: 55, si: 13 },
  { upTo: { us: 36, si: 900 }, us: 50, si: 10 },
  { upTo: { us: 72, si: 1800 }, us: 45, si: 7 },
  { us: 40, si: 4 },
] as const;

/**
 * The least temperature that fresh concrete is placed at in cold weather.
 *
 * @param dimension Least dimension of the section, in or mm; that of the thickest sections, which may
 *   be coldest, when absent.
 * @returns °F or °C.
 * @see UFGS 03311.
 */
export function leastTemperature(dimension: number = Infinity, system: UnitSystem): number {
  const row = LEAST_TEMPERATURE_TABLE.find((each) => {
    if ("under" in each) return dimension < each.under[system];
    return "upTo" in each ? dimension <= each.upTo[system] : true;
  })!;
  return row[system];
}
