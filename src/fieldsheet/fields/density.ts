import { field } from "./field";

/** Density and yield of the same sample. */
export const DENSITY_FIELDS = {
  density: field(
    "number",
    "density",
    `density, fresh density, density of concrete, unit weight, fresh unit weight, wet density,
      plastic density`,
  ),
  theoreticalDensity: field(
    "number",
    "theoretical density",
    `theoretical density, air free density, airfree density, theoretical unit weight,
      theoretical, density without air`,
  ),
  gravimetricAir: field(
    "number",
    "gravimetric air",
    `gravimetric air, gravimetric air content, air gravimetric, air by density,
      air by unit weight, air from density, air from unit weight, gravimetric`,
  ),
  densityTarget: field(
    "number",
    "specified density",
    `specified density, target density, design density, density target, specified unit weight,
      target unit weight, design unit weight`,
  ),
  densityLow: field(
    "number",
    "low density",
    `low density, minimum density, min density, density low, density min, minimum unit weight,
      min unit weight`,
  ),
  densityHigh: field(
    "number",
    "high density",
    `high density, maximum density, max density, density high, density max, maximum unit weight,
      max unit weight`,
  ),
  relativeYield: field("number", "relative yield", `relative yield, yield ratio`),
  measureVolume: field(
    "measured",
    "volume of the measure",
    `volume of the measure, measure volume, density measure volume, unit weight measure,
      unit weight measure volume, unit weight bucket volume, density bucket volume`,
  ),
} as const;
