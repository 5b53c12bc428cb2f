import { field } from "./field";

/** Density and yield of the same sample. */
export const DENSITY_FIELDS = {
  density: field("number"),
  theoreticalDensity: field("number"),
  gravimetricAir: field("percent"),
  densityTarget: field("number"),
  densityLow: field("number"),
  densityHigh: field("number"),
  relativeYield: field("number"),
  measureVolume: field("measured"),
} as const;
