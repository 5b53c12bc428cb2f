import type { Worked } from "./worked";

const UNO = "derived from Menzel's equation in the form of Uno 1998 (from memory)";
const METRIC = "derived from the metric constants of a weather-meter support page";

/** concrete temperature, air temperature, humidity, wind, units */
export const EVAPORATION: readonly Worked[] = [
  [[87, 80, 50, 12], "0.2435", `${UNO}: (70,599 − 0.5 × 57,243) × 5.8 / 10⁶`],
  [[80, 80, 50, 10], "0.1431", `${UNO}: 0.5 × 57,243 × 5 / 10⁶`],
  [[95, 95, 30, 15], "0.431028", `${UNO}: 0.7 × 95^2.5 × 7 / 10⁶`],
  [[70, 40, 50, 20, "us"], "0.323430", `${UNO}: (70^2.5 − 0.5 × 40^2.5) × 9 / 10⁶`],
  [[50, 90, 90, 10], "0", `${UNO}: (50^2.5 − 0.9 × 90^2.5) is below 0, so nothing evaporates`],
  [[75, 75, 100, 8], "0.000000", `${UNO}: saturated air as warm as the concrete`],
  [[30, 30, 50, 16, "si"], "0.833296", `${METRIC}: 5.275 × 0.5 × 47.778^2.5 × 20.02336 / 10⁶`],
  [
    [35, 32, 25, 24, "si"],
    "2.345338",
    `${METRIC}: 5.275 × (52.778^2.5 − 0.25 × 49.778^2.5) × 28.02336 / 10⁶`,
  ],
  [
    [20, 5, 60, 0, "si"],
    "0.154638",
    `${METRIC}: 5.275 × (37.778^2.5 − 0.6 × 22.778^2.5) × 4.02336 / 10⁶`,
  ],
];
