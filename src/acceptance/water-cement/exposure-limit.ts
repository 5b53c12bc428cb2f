import { quoted } from "../../measure/cell-value";
import { issue, type Issue } from "../../measure/issue";

/**
 * Most w/cm of each exposure class, ACI 318-19 Table 19.3.2.1 (from memory, to be verified; 318-25
 * was not looked at). F3 is that of concrete with reinforcement. Classes without a limit, such as F0
 * and C1, are not in it.
 */
export const MOST_WATER_CEMENT: Readonly<Record<string, number>> = {
  F1: 0.55,
  F2: 0.45,
  F3: 0.4,
  S1: 0.5,
  S2: 0.45,
  S3: 0.45,
  W2: 0.5,
  C2: 0.4,
};

/**
 * The most w/cm that exposure classes allow; of several, the least.
 *
 * @param classes One or more, as people write them: "F2", "F3, C2".
 * @returns w/cm, or the issue `exposure-without-limit`.
 */
export function mostWaterCement(classes: string): number | Issue {
  const named = classes.toUpperCase().match(/(?<![A-Z])[A-Z]+\s*\d+/g) ?? [];
  const limits = named.map((name) => MOST_WATER_CEMENT[name.replace(/\s/g, "")]);
  const known = limits.filter((limit) => limit !== undefined);
  if (known.length > 0 && known.length === limits.length) return Math.min(...known);
  const held = Object.keys(MOST_WATER_CEMENT).join(", ");
  return issue("exposure-without-limit", { value: quoted(classes), classes: held });
}
