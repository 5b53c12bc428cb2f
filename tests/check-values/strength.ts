import type { Worked } from "./worked";

const ACI = "derived from ACI 318-19 26.12.3.1 (trade articles quoting it)";
const FCR = "derived from the f′cr equations of ACI (trade articles quoting it)";
const C214 = "derived from ACI 214R, within-test variation";

const OK = "accepted";
const MEAN = "mean of three too low";
const SINGLE = "single test too low";
const BOTH = "single test and mean of three too low";

/** tests in order, specified strength, units; what is said of each; working */
export const STRENGTH_ACCEPT: readonly [
  (number | null)[],
  number,
  "us" | "si" | null,
  string[],
  string,
][] = [
  [[4200, 3900, 3900], 4000, null, [OK, OK, OK], `${ACI}: 12,000 / 3 = 4,000 is enough`],
  [[4200, 3900, 3890], 4000, "us", [OK, OK, MEAN], `${ACI}: 11,990 / 3 is under 4,000`],
  [[4600, 3500, 4600], 4000, null, [OK, OK, OK], `${ACI}: 4,000 − 500 = 3,500 is enough`],
  [[4600, 3490, 4600], 4000, null, [OK, SINGLE, OK], `${ACI}: 3,490 is under 3,500; mean 4,230`],
  [[4100, 4100, 3400], 4000, null, [OK, OK, BOTH], `${ACI}: 3,400 < 3,500; 11,600 / 3 = 3,867`],
  [[5400, 6500, 6200], 6000, null, [OK, OK, OK], `${ACI}: 0.90 × 6,000 = 5,400 is enough`],
  [[5390, 6500, 6200], 6000, null, [SINGLE, OK, OK], `${ACI}: 5,390 is under 5,400`],
  [[4500, 5300, 5300], 5000, null, [OK, OK, OK], `${ACI}: 5,000 is not over 5,000: − 500`],
  [
    [4200, null, 3900, 3800],
    4000,
    null,
    [OK, "", OK, MEAN],
    `${ACI}: 11,900 / 3; a blank is no test`,
  ],
  [[26.5, 33, 31], 30, "si", [OK, OK, OK], "from memory, ACI 318M-19: 30 − 3.5 = 26.5 is enough"],
  [[26.4, 33, 30], 30, "si", [SINGLE, OK, MEAN], "from memory, ACI 318M-19: 26.4 < 26.5; 89.4 / 3"],
  [[36, 44, 39], 40, "si", [OK, OK, MEAN], "from memory, ACI 318M-19: 0.90 × 40 = 36; 119 / 3"],
];

/** specified, deviation, tests, units */
export const STRENGTH_REQUIRED: readonly Worked[] = [
  [[4000, 420, 30], "4563", `${FCR}: 4,000 + 1.34 × 420`],
  [[4000, 600, 30], "4898", `${FCR}: 4,000 + 2.33 × 600 − 500`],
  [[4000, 420, 18], "4626", `${FCR}: 4,000 + 1.34 × 1.112 × 420`],
  [[4000, 420, 45, "us"], "4562.80", `${FCR}: over 30 tests, factor 1.00`],
  [[6000, 500, 30], "6670.00", `${FCR}: 6,000 + 1.34 × 500`],
  [[6000, 800, 22], "7375.84", `${FCR}: 0.90 × 6,000 + 2.33 × 1.06 × 800`],
  [[3000, 350, 15], "3544.04", `${FCR}: 3,000 + 1.34 × 1.16 × 350`],
  [[30, 3.5, 30, "si"], "34.690", "from memory, ACI 318M: 30 + 1.34 × 3.5"],
  [[40, 5, 27, "si"], "47.85970", "from memory, ACI 318M: 0.90 × 40 + 2.33 × 1.018 × 5"],
];

/** tests on record, factor on their deviation */
export const FEW_TESTS: readonly [number, number, string][] = [
  [15, 1.16, "trade articles quoting ACI"],
  [20, 1.08, "trade articles quoting ACI"],
  [25, 1.03, "trade articles quoting ACI"],
  [30, 1, "trade articles quoting ACI"],
  [18, 1.112, "derived: 1.16 − 0.08 × 3 / 5"],
  [22, 1.06, "derived: 1.08 − 0.05 × 2 / 5"],
  [27, 1.018, "derived: 1.03 − 0.03 × 2 / 5"],
  [200, 1, "derived: no factor over 30"],
];

/** cylinders, one test in a row; within-test deviation as printed; working */
export const STRENGTH_WITHIN: readonly [(number | null)[][], string, string][] = [
  [
    [
      [4230, 4390],
      [4360, 4160],
      [4270, 4390],
    ],
    "141.8",
    `${C214}: ranges 160, 200, 120, mean range 160; / 1.128`,
  ],
  [
    [
      [4100, 4250, 4000],
      [4300, 4210, 4390],
    ],
    "126.993503",
    `${C214}: ranges 250 and 180, mean 215; / 1.693`,
  ],
  [
    [
      [4100, 4250, null],
      [null, null, null],
      [4300, 4210, 4390],
    ],
    "119.649433",
    `${C214}: (150 / 1.128 + 180 / 1.693) / 2`,
  ],
  [[[31.2, 30.1]], "0.975177", `${C214}: 1.1 / 1.128 MPa`],
];
