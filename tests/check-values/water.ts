import type { Worked } from "./worked";

/** °F, °C, lb/ft³, kg/m³: ASTM C29 Table 3, from memory. */
export const C29_ROWS: readonly [number, number, number, number][] = [
  [60, 15.6, 62.366, 999.01],
  [65, 18.3, 62.336, 998.54],
  [70, 21.1, 62.301, 997.97],
  [73.4, 23, 62.274, 997.54],
  [75, 23.9, 62.261, 997.32],
  [80, 26.7, 62.216, 996.59],
  [85, 29.4, 62.166, 995.83],
];

const TANAKA = "Tanaka et al. 2001, worked out from the published coefficients";

/** temperature, units */
export const WATER_DENSITY: readonly Worked[] = [
  [[10, "si"], "999.7027", TANAKA],
  [[15, "si"], "999.1026", TANAKA],
  [[20, "si"], "998.2067", TANAKA],
  [[25, "si"], "997.0470", TANAKA],
  [[30, "si"], "995.6488", TANAKA],
  [[50], "62.40940", `${TANAKA}: 999.7027 kg/m³ × 0.0624279606 at 10 °C`],
  [[68, "us"], "62.31601", `${TANAKA}: 998.2067 kg/m³ × 0.0624279606 at 20 °C`],
  [[86, "us"], "62.15632", `${TANAKA}: 995.6488 kg/m³ × 0.0624279606 at 30 °C`],
];

const BY_C29 = "derived with the water of ASTM C29 Table 3 (from memory)";

/** mass of water, temperature, units */
export const BOWL_VOLUME: readonly Worked[] = [
  [[2.1186, 21.1, "si"], "2.1229", `${BY_C29}: 2.1186 / 997.97 × 1000`],
  [[4.670713, 70], "0.07497", `${BY_C29}: 2.1186 kg as lb, / 62.301: under the least size`],
  [[15.573, 73.4], "0.25007", `${BY_C29}: 15.573 / 62.274`],
  [[6.985, 23, "si"], "7.0022", `${BY_C29}: 6.985 / 997.54 × 1000`],
  [[15.6, 60, "us"], "0.2501", `${BY_C29}: 15.60 / 62.366`],
];

const SHARE = "derived: cup / bowl × 100";

/** cup volume, bowl volume */
export const CUP_PERCENT: readonly Worked[] = [
  [[0.0125, 0.245], "5.10", "Iowa DOT I.M. 318, canister of a Type B meter"],
  [[21.24, 2123.8], "1.00", "from memory, ASTM C173 apparatus: 21.24 mL in 0.075 ft³"],
  [[21.24 + 0.85, 2123.8], "1.04", "from memory, ASTM C173 apparatus: + 0.85 mL"],
  [[21.24 - 0.85, 2123.8], "0.96", "from memory, ASTM C173 apparatus: − 0.85 mL"],
  [[0.00075, 0.075], "1.000000", `${SHARE}, both in ft³`],
  [[22.1, 2124], "1.040490", `${SHARE}: 22.1 / 2,124`],
  [[21, 2100], "1.000000", `${SHARE}: 21 / 2,100`],
];
