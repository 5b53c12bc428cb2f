import type { Worked } from "./worked";

const CALCULATED = "derived from ASTM C567, calculated oven-dry density (from memory)";
const MEASURED = "derived from ASTM C567, measured oven-dry density (from memory)";
const MEASURED_MOIST = "derived from ASTM C567-11, equations 1 and 2";
const C567_11 = "ASTM C567-11";

/** dry fine, dry coarse, cementitious, volume, units */
export const DENSITY_OVENDRY: readonly Worked[] = [
  [[1350, 900, 611, 27], "110.49", `${CALCULATED}: 2,983.2 / 27.0`],
  [[800, 535, 362, 1, "si"], "1769.4", `${CALCULATED}: 800 + 535 + 1.2 × 362`],
  [[1240, 870, 635, 26.8], "107.164179", `${CALCULATED}: 2,872 / 26.8`],
  [[1500, 0, 700, 27], "86.666667", `${CALCULATED}: 2,340 / 27, no coarse aggregate`],
  [[650, 600, 400, 1, "si"], "1730.000000", `${CALCULATED}: 650 + 600 + 480`],
];

/** dried, saturated, suspended, units */
export const DENSITY_OVENDRY_MEASURED: readonly Worked[] = [
  [[10.9, 11.8, 5.85, "si"], "1826.4", `${MEASURED}: 10.90 × 997 / 5.95`],
  [[10.9, 11.8, 5.85, "us"], "114.129412", `${MEASURED}: 10.90 × 62.3 / 5.95`],
  [[20.4, 22.9, 11.2], "108.625641", `${MEASURED}: 20.4 × 62.3 / 11.7`],
  [[4950, 5400, 2480, "si"], "1690.119863", `${MEASURED}: 4,950 g × 997 / 2,920 g`],
];

/** mass at equilibrium, saturated, suspended, units */
export const DENSITY_EQUILIBRIUM_MEASURED: readonly Worked[] = [
  [[10.9, 11.8, 5.85, "si"], "1826.4", `${MEASURED_MOIST}: 10.90 × 997 / 5.95`],
  [[21, 22.9, 11.2], "111.820513", `${MEASURED_MOIST}: 21 × 62.3 / 11.7`],
  [[5000, 5400, 2480, "si"], "1707.191781", `${MEASURED_MOIST}: 5,000 g × 997 / 2,920 g`],
];

/** oven-dry density, units */
export const DENSITY_EQUILIBRIUM: readonly Worked[] = [
  [[2983.2 / 27], "113.49", `${C567_11}: 110.49 + 3`],
  [[1769.4, "si"], "1819.4", `${C567_11}: 1,769.4 + 50`],
  [[105], "108.000000", `${C567_11}: 105 + 3`],
  [[98.5, "us"], "101.500000", `${C567_11}: 98.5 + 3`],
  [[1700, "SI"], "1750.000000", `${C567_11}: 1,700 + 50`],
];
