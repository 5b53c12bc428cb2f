import { compareWithLimits } from "../../acceptance/limits";
import type { Measured } from "../../measure/measured";
import { QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import { systemOf } from "../../measure/system-of-value";
import type { UnitSystem } from "../../measure/unit-system";
import { HIGHEST, leastTemperature } from "../../methods/concrete-temperature/temperature-limits";
import { testRule } from "../rule";

/** Concrete that is too warm or too cold. */
export const concreteTemperature = testRule({
  id: "concrete-temperature",
  weight: "doubt",
  needs: ["concreteTemperature"],
  anyMethod: true,
  says: ["concrete-too-cold", "concrete-too-warm"],
  basis:
    "Where the sheet says nothing else, concrete is placed at no more than 95 °F (35 °C) in hot weather (ACI 301-20 and ACI 305.1-14, secondary), and in cold weather by the least dimension of the section at no less than 55 °F under 12 in, 50 to 36 in, 45 to 72 in and 40 above (13, 10, 7 and 4 °C; UFGS 03311). Without a dimension only the last is held.",
  look({ values }) {
    const { concreteTemperature: measured, temperatureLow, temperatureHigh, dimension } = values;
    if (!measured) return undefined;
    const given = [measured, temperatureLow, temperatureHigh].filter((value) => !!value);
    const system = systemOf(
      ...given.map((value) => [value, QUANTITIES.concreteTemperature] as const),
    );
    if (!system) return undefined;
    const low = temperatureLow?.value ?? leastTemperature(dimensionIn(system, dimension), system);
    const high = temperatureHigh?.value ?? HIGHEST[system];
    const verdict = compareWithLimits(measured.value, low, high);
    if (verdict === "within") return undefined;
    return {
      field: "concreteTemperature",
      say: verdict === "below" ? "concrete-too-cold" : "concrete-too-warm",
      values: {
        temperature: measured.value,
        limit: verdict === "below" ? low : high,
        unit: QUANTITIES.concreteTemperature.units[system],
      },
    };
  },
});

/** The least dimension in in or mm, also where it is written in ft, m or the other system's unit. */
function dimensionIn(system: UnitSystem, dimension: Measured | undefined): number | undefined {
  const millimetres =
    dimension && MILLIMETRES[dimension.unit?.toLowerCase().replace(/\W/g, "") ?? ""];
  if (!millimetres) return undefined;
  const inMillimetres = dimension.value * millimetres;
  return system === "si" ? inMillimetres : exact(inMillimetres / MILLIMETRES.in!);
}

const MILLIMETRES: Readonly<Record<string, number>> = {
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  ft: 304.8,
  feet: 304.8,
  mm: 1,
  cm: 10,
  m: 1000,
};
