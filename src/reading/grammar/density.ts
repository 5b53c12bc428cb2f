import { field, measuredAgain } from "../sense";

/** Density and yield of the same sample. */
export const DENSITY_GRAMMAR = {
  density: measuredAgain(
    "density, density weight, density gravimetric, density result|measured|reported|fresh",
    "result reported",
    "density",
  ),
  theoreticalDensity: field("density theoretical", "weight", "density"),
  gravimetricAir: field("gravimetric air, gravimetric", "content result by density", "percent"),
  densityTarget: field("density specified", "weight", "density"),
  densityLow: field("density low", "specified limit tolerance weight", "density"),
  densityHigh: field("density high", "specified limit tolerance weight", "density"),
  relativeYield: field("yield relative, ?yield", "", "percent"),
  measureVolume: field(
    "measure volume, measure density, measure bulk|by-gallon, measure",
    "density volume",
    "bulk liquid",
  ),
} as const;
