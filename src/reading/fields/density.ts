import { field } from "./field";

/** Density and yield of the same sample. */
export const DENSITY_FIELDS = {
  density: field("density"),
  theoreticalDensity: field("density"),
  gravimetricAir: field("percent"),
  densityTarget: field("density"),
  densityLow: field("density"),
  densityHigh: field("density"),
  relativeYield: field("number"),
  measureVolume: field("measured"),
} as const;
