import { notAPercentage } from "../../measure/bounds";
import { at, issue, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";

/** From this rate on fresh concrete needs care against drying: lb/ft²/h, kg/m²/h (retarder literature). */
export const TAKE_CARE_FROM: Readonly<Record<UnitSystem, number>> = { us: 0.2, si: 1 };

/**
 * The equation in one shape for both systems: factor × ((Tc + zero)^2.5 − r (Ta + zero)^2.5) × (V + still)
 * × 10⁻⁶. Each system has the form that Uno 1998 gave it (the metric one from a page quoting the
 * paper). The metric form is no conversion: it reads 4 to 5 % less than the US one would.
 */
const CONSTANTS = {
  us: { factor: 0.4, zero: 0, still: 2.5 },
  si: { factor: 5, zero: 18, still: 4 },
} as const;

/**
 * The humidity in percent where a value up to 1 can only be a share: a cell with a percentage format
 * holds 0.5 and shows 50 %, and no air out of doors is as dry as 1 %. `undefined` for any other value.
 */
export function humidityFromShare(value: number): number | undefined {
  return value > 0 && value <= 1 ? exact(value * 100) : undefined;
}

/** The weather at the surface of the concrete. */
export interface Weather {
  /** °F or °C. */
  readonly concrete: number;
  /** °F or °C. */
  readonly air: number;
  /** Relative humidity, %. */
  readonly humidity: number;
  /** mph or km/h. */
  readonly wind: number;
}

/**
 * Rate at which water evaporates from the surface of fresh concrete.
 *
 * @returns lb/ft²/h or kg/m²/h; 0 where the air is so moist and warm that nothing evaporates.
 *   The issue `not-a-percentage`, `humidity-as-share`, or one of `implausible`.
 * @see Menzel's equation in the two forms of Uno 1998, ACI Materials Journal 95-M34 (US from memory, SI from a page quoting the paper).
 */
export function evaporation(weather: Weather, system: UnitSystem): number | Issue {
  const { factor, zero, still } = CONSTANTS[system];
  const { concrete, air, humidity, wind } = weather;
  const wrong =
    at("concrete", implausible(concrete, QUANTITIES.concreteTemperature, system)) ??
    at("air", implausible(air, QUANTITIES.airTemperature, system)) ??
    at("wind", implausible(wind, QUANTITIES.wind, system)) ??
    at("humidity", asShare(humidity)) ??
    notAPercentage(humidity, "humidity");
  if (wrong) return wrong;
  const moist = humidity / 100;
  const drive = (concrete + zero) ** 2.5 - moist * (air + zero) ** 2.5;
  return Math.max(0, factor * drive * (wind + still) * 1e-6);
}

function asShare(humidity: number): Issue | undefined {
  const percent = humidityFromShare(humidity);
  return percent ? issue("humidity-as-share", { value: humidity, percent }) : undefined;
}
