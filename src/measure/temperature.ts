import type { UnitSystem } from "./unit-system";

/** A temperature in °C; °F in the US system, °C in the SI. */
export function celsius(temperature: number, system: UnitSystem): number {
  return system === "us" ? ((temperature - 32) * 5) / 9 : temperature;
}
