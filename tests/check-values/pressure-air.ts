import type { Worked } from "./worked";

const RE_SOURCE = "AASHTO re:source, April 2015";
const C231 = "derived from ASTM C231";
const SIEVED = "derived from ASTM C231 (formula from memory, proved by algebra)";

/** gauge, aggregate correction factor */
export const AIR_PRESSURE: readonly Worked[] = [
  [[4, 0.3], "3.700000", RE_SOURCE],
  [[6.1, 0.5], "5.600000", `${C231}: 6.1 − 0.5`],
  [[5.8, 0], "5.800000", `${C231}: 5.8 − 0`],
  [[7.25, 0.35], "6.900000", `${C231}: 7.25 − 0.35`],
];

/** sieved air, passing volume, coarse volume */
export const AIR_FULLMIX: readonly Worked[] = [
  [[6, 20, 5], "4.8583", `${SIEVED}: 12,000 / (2,500 − 30)`],
  [[6.5, 18, 0], "6.500000", `${SIEVED}: nothing was sieved off`],
  [[8, 10, 10], "4.166667", `${SIEVED}: 8,000 / (2,000 − 80)`],
  [[5, 15.2, 3.8], "4.040404", `${SIEVED}: 7,600 / (1,900 − 19)`],
];

/** sieved air, passing volume, mortar volume */
export const AIR_MORTAR: readonly Worked[] = [
  [[6, 20, 14], "8.3565", `${SIEVED}: 12,000 / (1,400 + 36)`],
  [[7, 16, 16], "7.000000", `${SIEVED}: all that passes is mortar`],
  [[8, 10, 5], "14.814815", `${SIEVED}: 8,000 / (500 + 40)`],
  [[5, 15.2, 10.4], "7.142857", `${SIEVED}: 7,600 / (1,040 + 24)`],
];
