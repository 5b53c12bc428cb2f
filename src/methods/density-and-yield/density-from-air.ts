import { notAboveZero } from "../../measure/bounds";
import { at, issue, type Issue } from "../../measure/issue";
import { percentAsShare } from "../../measure/percent-as-share";
import { exact } from "../../measure/rounding";

/** A mix whose density and air content are known together, such as the approved trial batch. */
export interface Reference {
  /** lb/ft³ or kg/m³. */
  readonly density: number;
  /** %. */
  readonly air: number;
}

/**
 * The density that the air content alone would make of a mix, everything else unchanged.
 *
 * What a measured density lies beside it is left for moisture, batching or weighing, on lightweight
 * concrete as well, where no theoretical density helps.
 *
 * @param reference Density and air content that belong together.
 * @param air Air content of the concrete in question, %.
 * @returns Density in the unit of the reference, or an issue: `not-above-zero`, `air-takes-all`,
 *   `percent-as-share`.
 * @see Derived: without air a cubic foot holds (100 − air) % of the same paste and aggregate.
 */
export function expectedDensity(reference: Reference, air: number): number | Issue {
  const wrong = wrongReference(reference) ?? wrongAir("air", air);
  if (wrong) return wrong;
  return (reference.density * (100 - air)) / (100 - reference.air);
}

/**
 * The air content that alone would explain a density, everything else unchanged: the inverse.
 *
 * @param density Measured density, in the unit of the reference.
 * @returns Air, %, or an issue: `not-above-zero`, `air-takes-all`, `density-not-by-air` where it
 *   would be below zero.
 */
export function expectedAir(reference: Reference, density: number): number | Issue {
  const wrong = wrongReference(reference) ?? notAboveZero(density, "density");
  if (wrong) return wrong;
  const air = exact(100 - (density / reference.density) * (100 - reference.air));
  if (air >= 0) return air;
  return at("density", issue("density-not-by-air", { density, reference: reference.density }));
}

function wrongReference({ density, air }: Reference): Issue | undefined {
  return notAboveZero(density, "reference density") ?? wrongAir("reference air", air);
}

function wrongAir(place: string, air: number): Issue | undefined {
  if (air >= 0 && air < 100) return at(place, percentAsShare(air));
  return at(place, issue("air-takes-all", { air }));
}
