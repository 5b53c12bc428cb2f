import { isIssue } from "../../measure/issue";
import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import {
  evaporation,
  humidityFromShare,
  TAKE_CARE_FROM,
} from "../../methods/evaporation/evaporation";
import { testRule } from "../rule";

const UNITS = { us: "lb/ft²/h", si: "kg/m²/h" } as const;

/** Weather in which the surface of the concrete dries fast. */
export const evaporationHigh = testRule({
  id: "evaporation-high",
  weight: "note",
  needs: ["concreteTemperature", "airTemperature", "humidity", "wind"],
  anyMethod: true,
  says: ["evaporation-high", "humidity-as-share"],
  basis:
    "From 0.20 lb/ft²/h (1.0 kg/m²/h) of evaporation on, fresh concrete is kept from drying (retarder literature); the rate by Menzel's equation in the forms of Uno 1998 (US from memory, SI from a page quoting the paper).",
  look({ values: { concreteTemperature: concrete, airTemperature: air, humidity, wind } }) {
    if (!concrete || !air || humidity === undefined || !wind) return undefined;
    if (humidity < 0 || humidity > 100) return undefined;
    const percent = humidityFromShare(humidity);
    if (percent) {
      return { field: "humidity", say: "humidity-as-share", values: { value: humidity, percent } };
    }
    const system = systemOf(
      [concrete, QUANTITIES.concreteTemperature],
      [air, QUANTITIES.airTemperature],
      [wind, QUANTITIES.wind],
    );
    if (!system) return undefined;
    const weather = { concrete: concrete.value, air: air.value, humidity, wind: wind.value };
    const rate = evaporation(weather, system);
    if (isIssue(rate) || rate < TAKE_CARE_FROM[system]) return undefined;
    const values = {
      rate: { figure: rate, places: 2 },
      from: TAKE_CARE_FROM[system],
      unit: UNITS[system],
    };
    return { field: "wind", values };
  },
});
