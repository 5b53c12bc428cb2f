import type { UnitSystem } from "../../measure/unit-system";

/** How far the fresh density may lie from a specified one where nothing else is said: lb/ft³ (common practice), kg/m³ (our own pair; EN 206 takes 30, see single-result.ts). */
export const FRESH_DENSITY_TOLERANCE: Readonly<Record<UnitSystem, number>> = { us: 3, si: 50 };
