import type { Measured } from "./measured";
import { canBe, type Quantity } from "./plausible";
import type { UnitSystem } from "./unit-system";

const SYSTEMS: readonly UnitSystem[] = ["us", "si"];

/** Other ways in which people write units, without signs and spaces. */
const SAME_UNIT = new Map(
  Object.entries({
    f: ["fahrenheit", "degf", "degreesf"],
    c: ["celsius", "degc", "degreesc"],
    in: ["inch", "inches", '"', "″"],
    mm: ["millimeter", "millimeters", "millimetre", "millimetres"],
    mph: ["mih", "milesperhour"],
    kmh: ["kph"],
    lbft3: ["pcf", "lbsft3", "lbcuft", "lbscuft"],
    kgm3: ["kgcum"],
  }).flatMap(([unit, words]) => words.map((word) => [word, unit] as const)),
);

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
      ([{ value, unit }, quantity]) =>
        canBe(value, quantity, system) &&
        (unit === undefined || plainUnit(unit) === plainUnit(quantity.units[system])),
    ),
  );
  return possible.length === 1 ? possible[0] : undefined;
}

/** The system in which a quantity has a unit; `undefined` for one that is not of the quantity. */
export function systemNamed(unit: string, quantity: Quantity): UnitSystem | undefined {
  return SYSTEMS.find((system) => plainUnit(unit) === plainUnit(quantity.units[system]));
}

function plainUnit(written: string): string {
  const letters = written
    .toLowerCase()
    .replace(/³/g, "3")
    .replace(/[°º./^\s-]/g, "");
  return SAME_UNIT.get(letters) ?? letters;
}
