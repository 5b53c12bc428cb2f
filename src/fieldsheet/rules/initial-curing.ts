import { QUANTITIES } from "../../measure/plausible";
import { systemOf } from "../../measure/system-of-value";
import { initialCuring, NARROW_FROM } from "../../methods/sampling/initial-curing";
import { testRule, type RemarkIn } from "../rule";

const SAYS = ["cured-too-cold", "cured-too-warm"] as const;

/** Specimens whose initial curing was too cold or too warm. */
export const initialCuringTemperature = testRule({
  id: "initial-curing",
  weight: "doubt",
  needs: [],
  needsOneOf: ["curingLow", "curingHigh"],
  anyMethod: true,
  says: SAYS,
  basis:
    "Specimens are cured at first between 60 and 80 °F (16 and 27 °C), and with a specified strength of 6,000 psi (40 MPa) or more between 68 and 78 °F (20 and 26 °C); ASTM C31 as a forum, a code body's question and answer and an exam page quote it. Without a strength the wider range is held.",
  look({ values: { curingLow, curingHigh, specifiedStrength } }) {
    const given = [curingLow, curingHigh].filter((value) => value !== undefined);
    const system = systemOf(...given.map((value) => [value, QUANTITIES.airTemperature] as const));
    if (!system) return undefined;
    const strengthSystem = specifiedStrength && systemOf([specifiedStrength, QUANTITIES.strength]);
    const high = strengthSystem && specifiedStrength.value >= NARROW_FROM[strengthSystem];
    const range = initialCuring(high ?? false, system);
    const unit = QUANTITIES.airTemperature.units[system];
    const remarks: RemarkIn<typeof SAYS>[] = [];
    if (curingLow && curingLow.value < range.low) {
      const values = { temperature: curingLow.value, limit: range.low, unit };
      remarks.push({ field: "curingLow", values });
    }
    if (curingHigh && curingHigh.value > range.high) {
      const values = { temperature: curingHigh.value, limit: range.high, unit };
      remarks.push({ field: "curingHigh", say: "cured-too-warm", values });
    }
    return remarks;
  },
});
