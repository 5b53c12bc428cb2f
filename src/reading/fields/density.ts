import { field } from "./field";

/** Density and yield of the same sample. */
export const DENSITY_FIELDS = {
  density: field("number", "density"),
  theoreticalDensity: field("number", "theoretical density"),
  gravimetricAir: field("number", "gravimetric air"),
  densityTarget: field("number", "specified density"),
  densityLow: field("number", "low density"),
  densityHigh: field("number", "high density"),
  relativeYield: field("number", "relative yield"),
  measureVolume: field("measured", "volume of the measure"),
} as const;
