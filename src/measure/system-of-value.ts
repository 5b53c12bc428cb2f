import type { Measured } from "./measured";
import { canBe, type Quantity } from "./plausible";
import type { UnitSystem } from "./unit-system";

const SYSTEMS: readonly UnitSystem[] = ["us", "si"];

/** How people write the units of each system, without signs and spaces. */
const WORDS: Readonly<Record<UnitSystem, RegExp>> = {
  us: /^(?:f|fahrenheit|degf|degreesf|in|inch|inches|"|″|mph|milesperhour|lbft3|pcf|lbsft3|lbcuft|psi|us)$/,
  si: /^(?:c|celsius|degc|degreesc|mm|millimet(?:er|re)s?|kmh|kph|kgm3|kgcum|mpa|si)$/,
};

/** A number of a record and the quantity that it is of. */
export type ValueOf = readonly [measured: Measured, quantity: Quantity];

/**
 * The one system of units that numbers of a record are in.
 *
 * @returns The system that their units name, else the only one in which all of them can be;
 *   `undefined` where both or none can be, or a unit is not one of the quantity.
 */
export function systemOf(...values: readonly ValueOf[]): UnitSystem | undefined {
  const possible = SYSTEMS.filter((system) =>
    values.every(
      ([{ value, unit }, quantity]) => isIn(unit, system) && canBe(value, quantity, system),
    ),
  );
  return possible.length === 1 ? possible[0] : undefined;
}

function isIn(unit: string | undefined, system: UnitSystem): boolean {
  if (unit === undefined) return true;
  return WORDS[system].test(lettersOf(unit));
}

function lettersOf(unit: string): string {
  return unit
    .toLowerCase()
    .replace(/³/g, "3")
    .replace(/[°º./^\s-]/g, "");
}
