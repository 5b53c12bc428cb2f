import type { Worked } from "./worked";

const UNO = "derived from Menzel's equation in the form of Uno 1998 (from memory)";
const METRIC = "Uno 1998, SI form, from a page quoting the paper";

/** concrete temperature, air temperature, humidity, wind, units */
export const EVAPORATION: readonly Worked[] = [
  [[87, 80, 50, 12], "0.2435", `${UNO}: (70,599 − 0.5 × 57,243) × 5.8 / 10⁶`],
  [[80, 80, 50, 10], "0.1431", `${UNO}: 0.5 × 57,243 × 5 / 10⁶`],
  [[95, 95, 30, 15], "0.431028", `${UNO}: 0.7 × 95^2.5 × 7 / 10⁶`],
  [[70, 40, 50, 20, "us"], "0.323430", `${UNO}: (70^2.5 − 0.5 × 40^2.5) × 9 / 10⁶`],
  [[50, 90, 90, 10], "0", `${UNO}: (50^2.5 − 0.9 × 90^2.5) is below 0, so nothing evaporates`],
  [[75, 75, 100, 8], "0.000000", `${UNO}: saturated air as warm as the concrete`],
  [[30, 30, 50, 16, "si"], "0.7981", `${METRIC}: 5 × 0.5 × 48^2.5 × 20 / 10⁶`],
  [[25, 25, 50, 20, "si"], "0.7275", `${METRIC}: 5 × 0.5 × 43^2.5 × 24 / 10⁶`],
  [[32, 30, 40, 15, "si"], "1.0728", `${METRIC}: 5 × (50^2.5 − 0.4 × 48^2.5) × 19 / 10⁶`],
  [[35, 32, 25, 24, "si"], "2.2443", `${METRIC}: 5 × (53^2.5 − 0.25 × 50^2.5) × 28 / 10⁶`],
];
