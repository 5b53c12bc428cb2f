import type { Measured } from "./measured";

/** Pounds of a US gallon of water, as the trade counts them (common practice). */
const LB_PER_GALLON = 8.33;

/** A mass in the unit of its system. */
export interface Mass {
  readonly mass: number;
  readonly unit: "lb" | "kg";
}

const UNITS: readonly (readonly [RegExp, unit: Mass["unit"], each: number])[] = [
  [/^(?:lbs?|pounds?)$/, "lb", 1],
  [/^(?:gals?|gallons?)$/, "lb", LB_PER_GALLON],
  [/^kgs?$|^kilograms?$/, "kg", 1],
  [/^(?:l|ltr|lit(?:er|re)s?|litros?)$/, "kg", 1],
];

/**
 * The mass of an amount of water or of binder, in pounds or kilograms. A litre of water counts as a
 * kilogram.
 *
 * @returns `undefined` where no unit was written, or one of something else.
 */
export function massOf({ value, unit }: Measured): Mass | undefined {
  const written = unit?.toLowerCase().replace(/[.\s]/g, "");
  const known = UNITS.find(([spelling]) => written !== undefined && spelling.test(written));
  return known && { mass: value * known[2], unit: known[1] };
}
