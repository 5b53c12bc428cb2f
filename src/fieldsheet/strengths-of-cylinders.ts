import { QUANTITIES } from "../measure/plausible";
import { systemOf } from "../measure/system-of-value";
import type { UnitSystem } from "../measure/unit-system";
import type { FieldValues } from "../reading/record";

/** The strengths of the companion cylinders of a test, in one system of units. */
export interface StrengthsOfCylinders {
  readonly strengths: readonly number[];
  readonly system: UnitSystem;
}

/** `undefined` for fewer than two, and where they are not in one system of units. */
export function strengthsOfCylinders({
  firstCylinder,
  secondCylinder,
  thirdCylinder,
}: FieldValues): StrengthsOfCylinders | undefined {
  const given = [firstCylinder, secondCylinder, thirdCylinder].filter((one) => one !== undefined);
  if (given.length < 2) return undefined;
  const system = systemOf(...given.map((one) => [one, QUANTITIES.strength] as const));
  return system && { strengths: given.map(({ value }) => value), system };
}
