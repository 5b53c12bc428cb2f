import type { Worked } from "./worked";

const STUDY_GUIDE = "a concrete field-technician study guide (2026)";
const DECK = "a concrete-water teaching deck";
const THESIS = "University of Florida thesis, p. 72";
const FORMULA = "derived from ASTM C138 (common practice)";

/** full, empty, volume, units */
export const DENSITY: readonly Worked[] = [
  [[54.1, 18.6, 0.25], "142.0", STUDY_GUIDE],
  [[44.62, 8.41, 0.2494], "145.18845", `${FORMULA}: 36.21 / 0.2494`],
  [[75.3, 18.1, 0.5], "114.40000", `${FORMULA}: 57.2 / 0.5, a lightweight concrete`],
  [[24.62, 8.3, 7.01, "si"], "2328.10271", `${FORMULA}: 16.32 kg / 7.01 L × 1000`],
  [[24.62, 8.3, 0.00701, "si"], "2328.10271", `${FORMULA}: 16.32 kg / 0.00701 m³`],
  [["54.1", "18.6", "1/4"], "142.0", `${STUDY_GUIDE}, numbers written as text`],
];

/** mass, density, unit */
export const BATCH_YIELD: readonly Worked[] = [
  [[4060 + 7733 + 13586 + 1866, 142.1, "yd3"], "7.1012", DECK],
  [[760 + 279 + 1033 + 1736 + 4.41, 141.2, "yd3"], "1.000", THESIS],
  [[3900, 144.5], "26.990", `${FORMULA}: 3900 / 144.5`],
  [[3900, 144.5, "ft3"], "26.990", `${FORMULA}: 3900 / 144.5`],
  [[3900, 144.5, "yd3"], "0.99962", `${FORMULA}: 26.990 / 27`],
  [[2928, 108, "ft3"], "27.111111", `${FORMULA}: 2928 / 108`],
  [[35100, 130, "yd3"], "10.000000", `${FORMULA}: 35100 / 130 / 27`],
  [[2340, 2335, "m3"], "1.0021413", `${FORMULA}: 2340 / 2335`],
  [[2340, 2335, "si"], "1.0021413", `${FORMULA}: 2340 / 2335`],
];

/** yield, design volume */
export const RELATIVE_YIELD: readonly Worked[] = [
  [[0.99962, 1], "0.99962", `${FORMULA}: 3900 / 144.5 / 27 over 1 yd³`],
  [[7.1012, 7], "1.014457", `${FORMULA}: 7.1012 / 7, over-yield`],
  [[6.1, 6], "1.016667", `${FORMULA}: 6.1 / 6`],
  [[9.85, 10], "0.985000", `${FORMULA}: 9.85 / 10, under-yield`],
];

/** mass, absolute volume, units */
export const DENSITY_THEORETICAL: readonly Worked[] = [
  [[3900, 25.6], "152.344", `${FORMULA}: 3900 / 25.60`],
  [[760 + 279 + 1033 + 1736 + 4.41, 27], "141.2", THESIS],
  [[3100, 26.2], "118.320611", `${FORMULA}: 3100 / 26.2`],
  [[4050, 26.73], "151.515152", `${FORMULA}: 4050 / 26.73`],
  [[2390, 0.94, "si"], "2542.553191", `${FORMULA}: 2390 / 0.94`],
];

/** theoretical density, density, units */
export const AIR_GRAVIMETRIC: readonly Worked[] = [
  [[3900 / 25.6, 144.5], "5.1487", `${FORMULA}: (152.344 − 144.5) / 152.344 × 100`],
  [[150, 141], "6.000000", `${FORMULA}: 9 / 150 × 100`],
  [[118.32, 111.9], "5.425963", `${FORMULA}: 6.42 / 118.32 × 100`],
  [[2500, 2350, "si"], "6.000000", `${FORMULA}: 150 / 2500 × 100`],
  [[152, 152], "0.000000", `${FORMULA}: no air`],
];

/** cement mass, yield */
export const CEMENT_CONTENT: readonly Worked[] = [
  [[564, 0.99962], "564.2144", `${FORMULA}: 564 / 0.99962 lb/yd³`],
  [[4060, 7.1012], "571.73435", `${FORMULA}: 4060 / 7.1012 lb/yd³`],
  [[335, 1.002], "334.3313", `${FORMULA}: 335 / 1.002 kg/m³`],
];
