/*
 * What the statistics are checked against. Each row names its source; "derived" rows are worked by
 * hand, with the working beside them.
 */
export const HANDBOOK = "NIST/SEMATECH e-Handbook of Statistical Methods";

/** Individuals chart with moving range, 6.3.2.2. */
export const INDIVIDUALS = {
  values: [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1],
  mean: "50.81",
  meanMovingRange: "1.8778",
  lower: "45.8159",
  upper: "55.8041",
  source: `${HANDBOOK}, 6.3.2.2`,
} as const;

/** Exponentially weighted moving average, 6.3.2.4: weight 0.3, start 50, s 2.0539. */
export const EWMA = {
  values: [
    52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2,
    52.6, 52.4, 53.6, 52.1,
  ],
  lambda: 0.3,
  target: 50,
  deviation: 2.0539,
  smoothed: [
    "50.60",
    "49.52",
    "50.56",
    "50.18",
    "50.16",
    "49.21",
    "49.75",
    "49.85",
    "50.26",
    "50.33",
    "50.11",
    "49.36",
    "49.52",
    "50.05",
    "49.38",
    "49.92",
    "50.73",
    "51.23",
    "51.94",
    "51.99",
  ],
  lower: "47.4115",
  upper: "52.5884",
  source: `${HANDBOOK}, 6.3.2.4`,
} as const;

/** Tabular cumulative sums, 6.3.2.3: target 325, k 0.3175, h 4.1959. */
export const CUSUM = {
  values: [
    324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625,
    325.15, 328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
  ],
  target: 325,
  k: 0.3175,
  h: 4.1959,
  high: [
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.03",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "3.01",
    "4.94",
    "7.45",
    "10.63",
    "11.99",
    "14.44",
    "16.00",
    "19.04",
  ],
  low: [
    "0.00",
    "0.01",
    "0.00",
    "0.33",
    "0.00",
    "0.00",
    "0.56",
    "0.72",
    "0.17",
    "0.25",
    "0.31",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
    "0.00",
  ],
  source: `from memory, ${HANDBOOK}, 6.3.2.3; each sum also follows from the one before`,
} as const;

/** value, low, high, deviation, chance as printed. */
export const CHANCES: readonly (readonly [
  number,
  number | undefined,
  number | undefined,
  number,
  string,
  string,
])[] = [
  [
    -5.47,
    undefined,
    -5.4,
    0.05,
    "0.9192",
    "JCGM 106:2012, example of an upper limit (inputs from memory)",
  ],
  [
    509.7,
    490,
    undefined,
    8.6,
    "0.9890",
    "JCGM 106:2012, example of a lower limit (inputs from memory)",
  ],
  [
    7.25,
    4.5,
    7.5,
    0.28,
    "0.814",
    "derived: share of a normal distribution below (7.5 − 7.25) / 0.28 = 0.893",
  ],
  [7.5, 4.5, 7.5, 0.28, "0.500", "derived: on a limit, the other one far away, it is one half"],
  [6, 4.5, 7.5, 1.5, "0.683", "many tables: within one deviation of the mean lie 68.3 %"],
  [6, 4.5, 7.5, 0.75, "0.954", "many tables: within two deviations of the mean lie 95.4 %"],
];
