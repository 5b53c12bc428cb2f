import { phrase } from "../messages/catalogue";
import type { Phrase } from "../messages/sentence";
import { issue, type Issue } from "./issue";
import { otherSystem, type UnitSystem } from "./unit-system";

/** What a quantity is called, its unit in each system, and between which values it can lie there. */
export interface Quantity {
  readonly name: Phrase;
  readonly units: Readonly<Record<UnitSystem, string>>;
  readonly limits: Readonly<Record<UnitSystem, readonly [low: number, high: number]>>;
}

const TEMPERATURE_UNITS = { us: "°F", si: "°C" } as const;

/**
 * Limits that no fresh concrete passes, our own choice. They are there to catch a number given in the
 * other system, so where the trade allows it the two ranges have nothing in common.
 */
export const QUANTITIES = {
  density: {
    name: phrase("quantity-density"),
    units: { us: "lb/ft³", si: "kg/m³" },
    limits: { us: [20, 300], si: [320, 4800] },
  },
  concreteTemperature: {
    name: phrase("quantity-concreteTemperature"),
    units: TEMPERATURE_UNITS,
    limits: { us: [32, 140], si: [0, 60] },
  },
  airTemperature: {
    name: phrase("quantity-airTemperature"),
    units: TEMPERATURE_UNITS,
    limits: { us: [0, 140], si: [-17, 60] },
  },
  /** Where the equation for the density of water holds. */
  waterTemperature: {
    name: phrase("quantity-waterTemperature"),
    units: TEMPERATURE_UNITS,
    limits: { us: [32, 104], si: [0, 40] },
  },
  wind: {
    name: phrase("quantity-wind"),
    units: { us: "mph", si: "km/h" },
    limits: { us: [0, 100], si: [0, 160] },
  },
  bowl: {
    name: phrase("quantity-bowl"),
    units: { us: "ft³", si: "L" },
    limits: { us: [0.02, 4], si: [0.5, 120] },
  },
  strength: {
    name: phrase("quantity-strength"),
    units: { us: "psi", si: "MPa" },
    limits: { us: [250, 35_000], si: [1, 240] },
  },
  strengthDeviation: {
    name: phrase("quantity-strengthDeviation"),
    units: { us: "psi", si: "MPa" },
    limits: { us: [25, 5000], si: [0.1, 24] },
  },
  /** A nominal slump: what lies below is no slump to ask for. */
  nominalSlump: {
    name: phrase("quantity-nominalSlump"),
    units: { us: "in", si: "mm" },
    limits: { us: [0.5, 12], si: [13, 300] },
  },
  slump: {
    name: phrase("quantity-slump"),
    units: { us: "in", si: "mm" },
    limits: { us: [0, 12], si: [0, 300] },
  },
  aggregateSize: {
    name: phrase("quantity-aggregateSize"),
    units: { us: "in", si: "mm" },
    limits: { us: [0.2, 6], si: [6.3, 160] },
  },
} as const satisfies Record<string, Quantity>;

/** Whether a value can be in the unit that the system has for the quantity. */
export function canBe(value: number, quantity: Quantity, system: UnitSystem): boolean {
  const [low, high] = quantity.limits[system];
  return value >= low && value <= high;
}

/**
 * What is wrong with a value that cannot be in its system of units: the issue `value-in-other-system`
 * when it can only be in the other system, else `value-cannot-be`; `result-beyond-a-cell` for a result
 * that is no number.
 *
 * @param value In the unit that the system has for the quantity.
 */
export function implausible(
  value: number,
  quantity: Quantity,
  system: UnitSystem,
): Issue | undefined {
  if (canBe(value, quantity, system)) return undefined;
  if (!Number.isFinite(value)) return issue("result-beyond-a-cell");
  const other = otherSystem(system);
  const [low, high] = quantity.limits[system];
  return issue(canBe(value, quantity, other) ? "value-in-other-system" : "value-cannot-be", {
    quantity: quantity.name,
    value: Number(value.toPrecision(6)),
    unit: quantity.units[system],
    low,
    high,
    other,
    otherUnit: quantity.units[other],
  });
}
