import { compareWithLimits } from "../../acceptance/limits";
import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { USUAL_TEMPERATURES } from "../../methods/concrete-temperature/temperature-limits";
import { testRule } from "../rule";

/** Concrete that is too warm or too cold. */
export const concreteTemperature = testRule({
  id: "concrete-temperature",
  weight: "doubt",
  needs: ["concreteTemperature"],
  anyMethod: true,
  says: ["concrete-too-cold", "concrete-too-warm"],
  basis:
    "Where the sheet says nothing else, concrete is placed at no more than 95 °F (35 °C) in hot weather (from memory, ACI 305.1) and at no less than 40 °F (5 °C) in cold weather even in the thickest section (from memory, ASTM C94).",
  look({ values }) {
    const { concreteTemperature: measured, temperatureLow, temperatureHigh } = values;
    if (!measured) return undefined;
    const given = [measured, temperatureLow, temperatureHigh].filter((value) => !!value);
    const system = systemOf(
      ...given.map((value) => [value, QUANTITIES.concreteTemperature] as const),
    );
    if (!system) return undefined;
    const low = temperatureLow?.value ?? USUAL_TEMPERATURES[system].low;
    const high = temperatureHigh?.value ?? USUAL_TEMPERATURES[system].high;
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
