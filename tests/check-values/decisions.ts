/*
 * What decisions about loads, technicians and registers are checked against. Each row names its
 * source; "derived" rows are worked by hand, with the working beside them.
 */
import type { Disposition } from "../../src/acceptance/disposition/disposition";

const CHECK = "C94-98 16.6, as a trade question and answer quotes it";
const PRELIMINARY = "C94-98 7.3, as a trade article on admixture at the jobsite tells it";
const RATIONALE = "rationale of the 2021–22 revision of C94";
const UFGS = "UFGS 03300A (older text)";
const OURS = "our own rule: a result far outside is held";

/** first, low, high; what else is known; the rule's name; the decision; source and working. */
export const DISPOSITIONS: readonly [
  first: number,
  low: number | undefined,
  high: number | undefined,
  rule: string | undefined,
  more: { second?: number; minutesLeft?: number; revolutionsLeft?: number; far?: number },
  decision: Disposition,
  source: string,
][] = [
  [6, 4.5, 7.5, undefined, {}, "accept", `${CHECK}: within`],
  [7.5, 4.5, 7.5, undefined, {}, "accept", `${CHECK}: on the limit is within`],
  [7.75, 4.5, 7.5, undefined, {}, "check test", `${CHECK}: outside, another portion at once`],
  [4.25, 4.5, undefined, "check test", {}, "check test", `${CHECK}: below, with a low limit only`],
  [7.75, 4.5, 7.5, "C94", { second: 7.5 }, "accept", `${CHECK}: the second decides`],
  [7.75, 4.5, 7.5, "C94", { second: 8 }, "reject", `${CHECK}: a second failure`],
  [
    7.75,
    4.5,
    7.5,
    "C94",
    { second: 4.25 },
    "reject",
    `${CHECK}: not averaged, though 6.00 is within`,
  ],
  [9.75, 4.5, 7.5, "C94", { far: 2 }, "hold", `${OURS}: 2.25 over, more than 2`],
  [
    9.75,
    4.5,
    7.5,
    "averaged",
    { second: 4.75, far: 2 },
    "hold",
    `${OURS}: 2.25 over, though the mean, 7.25, is within`,
  ],
  [9.5, 4.5, 7.5, "C94", { far: 2 }, "check test", `${OURS}: 2.00 over is not more than 2`],
  [9.75, 4.5, 7.5, "C94", { far: 2, second: 7 }, "hold", `${OURS}: both cannot be of one sample`],
  [9.75, 4.5, 7.5, "C94", { far: 2, second: 9.5 }, "reject", `${CHECK}: a second failure`],

  [3, 5, 7, "preliminary sample", {}, "adjust and retest", `${PRELIMINARY}: its own example`],
  [
    3,
    5,
    7,
    "preliminary",
    { minutesLeft: 20, revolutionsLeft: 30 },
    "adjust and retest",
    `${PRELIMINARY}: 30 revolutions fit`,
  ],
  [3, 5, 7, "preliminary", { revolutionsLeft: 29 }, "hold", `${PRELIMINARY}: 30 do not fit`],
  [3, 5, 7, "preliminary", { minutesLeft: 0 }, "hold", `${PRELIMINARY}: no time is left`],
  [7.25, 5, 7, "preliminary", {}, "acceptance sample", `${RATIONALE}: above, that one decides`],
  [
    6,
    5,
    7,
    "preliminary",
    {},
    "acceptance sample",
    `${PRELIMINARY}: for information, not acceptance`,
  ],
  [3, 5, 7, "preliminary", { second: 5.5 }, "accept", `${PRELIMINARY}: the acceptance sample`],
  [3, 5, 7, "preliminary", { second: 4.75 }, "check test", `${CHECK}: its first result is outside`],
  [0.5, 5, 7, "preliminary", { far: 3 }, "hold", `${OURS}: 4.5 under, more than 3`],

  [6, 4.5, 7.5, "averaged", {}, "accept", `${UFGS}: no limit is reached`],
  [7.5, 4.5, 7.5, "averaged", {}, "check test", `${UFGS}: a limit that is reached is acted upon`],
  [8, 4.5, 7.5, "UFGS 03300A", {}, "check test", `${UFGS}: a second test at once`],
  [8, 4.5, 7.5, "averaged", { second: 6.5 }, "accept", `${UFGS}: (8 + 6.5) / 2 = 7.25`],
  [8, 4.5, 7.5, "averaged", { second: 7 }, "hold", `${UFGS}: (8 + 7) / 2 = 7.50 reaches the limit`],
  [8, 4.5, 7.5, "averaged", { second: 4 }, "accept", `${UFGS}: (8 + 4) / 2 = 6.00`],
];

const TABLE = "derived from C173 Table 1 (0 to 0.9 %)";

/** what is known; low, high; least, most ("" for no end) and what is decided; working. */
export const AIR_BOUNDS: readonly [
  test: {
    reading: number;
    final?: boolean;
    cups?: number;
    alcohol?: { amount: number; unit?: "pt" | "oz" | "L" };
  },
  limits: { low?: number; high?: number },
  least: number,
  most: number | undefined,
  verdict: "within" | "below" | "above" | undefined,
  source: string,
][] = [
  [{ reading: 6, cups: 0 }, { low: 4.5, high: 7.5 }, 5, 6, "within", `${TABLE}: 5.10 to 6.00`],
  [{ reading: 5.25, cups: 0 }, { low: 4.5 }, 4.25, 5.25, undefined, `${TABLE}: 4.35 to 5.25`],
  [{ reading: 9, cups: 2 }, { high: 7.5 }, 10, 11, "above", `${TABLE}: 10.10 to 11.00`],
  [{ reading: 0.5, cups: 0 }, {}, 0, 0.5, undefined, `${TABLE}: −0.40 cannot be, 0`],
  [
    { reading: 6, cups: 0, alcohol: { amount: 3, unit: "pt" } },
    { low: 4.5, high: 7.5 },
    5.75,
    5.75,
    "within",
    "C173: 6.00 − 0.30 = 5.70, nothing is missing",
  ],
  [
    { reading: 6, cups: 0, alcohol: { amount: 2 } },
    { low: 4.5, high: 7.5 },
    5.25,
    6,
    "within",
    "derived: 2 pt and 2 oz subtract 0, 2 L 0.6 + 0.3 × 0.1 / 0.5 = 0.66; 5.34",
  ],
  [
    { reading: 6, cups: 0, alcohol: { amount: 64 } },
    {},
    5.5,
    5.5,
    undefined,
    "derived: only fl oz reach 64; 6.00 − 0.60 = 5.40",
  ],
  [
    { reading: 7.25, final: false, cups: 0, alcohol: { amount: 1, unit: "pt" } },
    { low: 4.5, high: 7.5 },
    7,
    7.5,
    "within",
    "derived: 7.25 ± 0.25",
  ],
  [
    { reading: 7.5, final: false, cups: 0, alcohol: { amount: 1, unit: "pt" } },
    { low: 4.5, high: 7.5 },
    7.25,
    7.75,
    undefined,
    "derived: 7.50 ± 0.25",
  ],
  [
    { reading: 7, alcohol: { amount: 0, unit: "pt" } },
    { low: 4.5, high: 7.5 },
    7,
    7,
    "within",
    "derived: 7 % and one cup more would be on the scale of 9 %, so there were none",
  ],
  [
    { reading: 8.5, alcohol: { amount: 0, unit: "pt" } },
    { high: 7.5 },
    8.5,
    undefined,
    "above",
    "derived: above without a cup, more so with some",
  ],
  [
    { reading: 8.5, alcohol: { amount: 0, unit: "pt" } },
    { low: 4.5, high: 9 },
    8.5,
    undefined,
    undefined,
    "derived: within without a cup, above with one",
  ],
];

const BY_AIR = "derived: ρ (100 − A) ÷ (100 − A₀)";

/** reference density, reference air, air; density as printed; working */
export const DENSITY_EXPECTED: readonly [number, number, number, string, string][] = [
  [145, 6, 6, "145.000", `${BY_AIR}: nothing changes`],
  [145, 6, 8, "141.915", `${BY_AIR}: 145 × 92 / 94`],
  [115, 5.5, 3.5, "117.434", `${BY_AIR}: 115 × 96.5 / 94.5, lightweight`],
  [2320, 6, 4, "2369.362", `${BY_AIR}: 2,320 × 96 / 94`],
];

/** reference density, reference air, density; air as printed; working */
export const AIR_EXPECTED: readonly [number, number, number, string, string][] = [
  [145, 6, 145, "6.0000", "derived: nothing changes"],
  [145, 6, 142, "7.9448", "derived: 100 − 142 × 94 / 145"],
  [115, 5.5, 117.434, "3.4999", "derived: 100 − 117.434 × 94.5 / 115"],
  [2320, 6, 2369.362, "4.0000", "derived: 100 − 2,369.362 × 94 / 2,320"],
];

const PAIRS = "derived by hand";

/** tests by A and by others; difference and standard error as printed, degrees of freedom; working */
export const BIASES: readonly {
  readonly tests: readonly [value: number, who: string, mix: string][];
  readonly paired?: boolean;
  readonly difference: string;
  readonly standardError: string;
  readonly t: string;
  readonly freedom: string;
  readonly source: string;
}[] = [
  {
    tests: [
      [6, "A", "M1"],
      [6.5, "A", "M1"],
      [7, "A", "M1"],
      [5, "B", "M1"],
      [5.5, "B", "M1"],
      [6, "B", "M1"],
    ],
    difference: "1.0000",
    standardError: "0.4082",
    t: "2.4495",
    freedom: "4.000",
    source: `${PAIRS}: both variances 0.25; √(0.25 / 3 + 0.25 / 3); 3 + 3 − 2`,
  },
  {
    tests: [
      [6, "A", "M1"],
      [6.5, "A", "M1"],
      [5, "B", "M1"],
      [5.5, "B", "M1"],
      [4, "A", "M2"],
      [4.5, "A", "M2"],
      [4, "B", "M2"],
      [4.5, "B", "M2"],
    ],
    difference: "0.5000",
    standardError: "0.2500",
    t: "2.0000",
    freedom: "4.000",
    source: `${PAIRS}: (2 × 1 + 2 × 0) / 4; variances 0.125; 0.125 (1/4 + 2 × (2/4)² / 2); 2 + 2`,
  },
  {
    tests: [
      [6.5, "A", "M1"],
      [5, "B", "M1"],
      [5.5, "B", "M1"],
      [6, "B", "M1"],
    ],
    difference: "1.0000",
    standardError: "0.5774",
    t: "1.7321",
    freedom: "2.000",
    source: `${PAIRS}: one test has no deviation, so the others' 0.25 stands for it: √(0.25 (1 + 1/3))`,
  },
  {
    tests: [
      [6.25, "A", "S1"],
      [6, "B", "S1"],
      [5.5, "A", "S2"],
      [5, "B", "S2"],
      [7.25, "A", "S3"],
      [6.5, "B", "S3"],
      [4.75, "A", "S4"],
      [4.75, "B", "S4"],
    ],
    paired: true,
    difference: "0.3750",
    standardError: "0.1614",
    t: "2.3238",
    freedom: "3.000",
    source: `${PAIRS}: 0.25, 0.5, 0.75, 0; mean 0.375, variance 0.3125 / 3, / 4`,
  },
];

/** day, mix, volume, area, minute of the day, tests made; what was due: required, made, missing */
export const TESTS_DUE: readonly {
  readonly rule: string;
  readonly units: "us" | "si";
  readonly placed: readonly {
    readonly day: number;
    readonly mix: string;
    readonly volume?: number;
    readonly area?: number;
    readonly minute?: number;
    readonly tests: number;
  }[];
  readonly due: readonly (readonly [
    day: number,
    mix: string,
    required: number,
    made: number,
    missing: number,
  ])[];
  readonly source: string;
}[] = [
  {
    rule: "ACI 318-08",
    units: "us",
    placed: [
      { day: 46000, mix: "LW4", volume: 90, tests: 1 },
      { day: 46000, mix: "LW4", volume: 70, tests: 0 },
      { day: 46000, mix: "NW5", volume: 12, tests: 0 },
      { day: 46001, mix: "LW4", volume: 150, tests: 1 },
    ],
    due: [
      [46000, "LW4", 2, 1, 1],
      [46000, "NW5", 1, 0, 1],
      [46001, "LW4", 1, 1, 0],
    ],
    source: "an article on ACI 318-08: 160 yd³ begin a second 150, 12 yd³ are a day, 150 are one",
  },
  {
    rule: "ACI 318-08",
    units: "us",
    placed: [{ day: 46000, mix: "NW5", volume: 100, area: 12_000, tests: 3 }],
    due: [[46000, "NW5", 3, 3, 0]],
    source: "an article on ACI 318-08: 12,000 ft² begin a third 5,000",
  },
  {
    rule: "ACI 318-08",
    units: "si",
    placed: [{ day: 46000, mix: "NW5", volume: 230, tests: 2 }],
    due: [[46000, "NW5", 3, 2, 1]],
    source: "an article on ACI 318-08: 230 m³ begin a third 110",
  },
  {
    rule: "100 yd3",
    units: "us",
    placed: [{ day: 46000, mix: "NW5", volume: 160, tests: 3 }],
    due: [[46000, "NW5", 2, 3, 0]],
    source: "common practice: 160 yd³ begin a second 100; one too many is none missing",
  },
  {
    rule: "100 yd3",
    units: "us",
    placed: [
      { day: 46000, mix: "NW5", volume: 100, tests: 1 },
      { day: 46000, mix: "LW4", volume: 120, tests: 1 },
      { day: 46000, mix: "LW4", volume: 81, tests: 1 },
    ],
    due: [
      [46000, "NW5", 1, 1, 0],
      [46000, "LW4", 3, 2, 1],
    ],
    source: "common practice: 100 yd³ are one; 120 + 81 = 201 yd³ begin a third 100",
  },
  {
    rule: "100 yd3",
    units: "us",
    placed: [
      { day: 46000, mix: "NW5", volume: 60, tests: 1 },
      { day: 46001, mix: "NW5", volume: 60, tests: 0 },
    ],
    due: [
      [46000, "NW5", 1, 1, 0],
      [46001, "NW5", 1, 0, 1],
    ],
    source: "common practice: every day begins its own 100 yd³",
  },
  {
    rule: "UFGS 03301A",
    units: "us",
    placed: [
      { day: 46000, mix: "NW5", minute: 420, tests: 1 },
      { day: 46000, mix: "NW5", minute: 840, tests: 1 },
    ],
    due: [[46000, "NW5", 2, 2, 0]],
    source: "UFGS 03301A: 7:00 to 14:00 is one period of 8 hours, two tests",
  },
  {
    rule: "UFGS 03301A",
    units: "us",
    placed: [
      { day: 46000, mix: "NW5", minute: 360, tests: 3 },
      { day: 46000, mix: "NW5", minute: 1380, tests: 2 },
    ],
    due: [[46000, "NW5", 6, 5, 1]],
    source: "UFGS 03301A: 6:00 to 23:00 is 17 hours, three periods of 8, two tests each",
  },
  {
    rule: "UFGS 03301A",
    units: "us",
    placed: [
      { day: 46000, mix: "NW5", minute: 420, tests: 1 },
      { day: 46000, mix: "NW5", minute: 960, tests: 1 },
      { day: 46000, mix: "LW4", tests: 1 },
    ],
    due: [
      [46000, "NW5", 4, 2, 2],
      [46000, "LW4", 2, 1, 1],
    ],
    source: "UFGS 03301A: 7:00 to 16:00 is 9 hours, two periods of 8; without times one period",
  },
];

/** id, day, months; state and days; working. 46000 is 9 December 2025. */
export const REGISTER: readonly { readonly id: string; readonly checked: number }[] = [
  { id: "M-1", checked: 45000 },
  { id: "M-1", checked: 46000 },
  { id: "M-2", checked: 45700 },
];
export const REGISTER_STATES: readonly [
  id: string,
  day: number,
  months: number | undefined,
  state: string,
  days: number | undefined,
  source: string,
][] = [
  ["M-1", 46100, undefined, "current", 265, "derived: 9 December 2026 is day 46365"],
  ["m-1", 46340, undefined, "due", 25, "derived: 46365 − 46340"],
  ["M-1", 46365, undefined, "due", 0, "derived: the last day is still current"],
  ["M-1", 46366, undefined, "overdue", 1, "derived: 46366 − 46365"],
  [
    "M-1",
    45999,
    undefined,
    "overdue",
    633,
    "derived: 15 March 2023 + 1 year is 45366; not the later check",
  ],
  [
    "M-2",
    45800,
    3,
    "overdue",
    11,
    "derived: 12 February 2025 + 3 months is 12 May 2025, day 45789",
  ],
  ["M-1", 44999, undefined, "unknown", undefined, "every check lies after the day"],
  ["M-9", 46000, undefined, "unknown", undefined, "not in the register"],
];

/** batch water, free moisture, added, cementitious; w/cm as printed; working */
export const WATER_CEMENT: readonly [number, number, number, number, string, string][] = [
  [250, 30, 0, 611, "0.4583", "derived: 280 / 611"],
  [250, 30, 25, 611, "0.4992", "derived: 305 / 611, 3 gal/yd³ of 8.33 lb"],
  [162, 0, 0, 540, "0.3000", "derived: 162 / 540, first mix of the open data"],
  [160, -8, 10, 360, "0.4500", "derived: (160 − 8 + 10) / 360, dry aggregate takes 8 in"],
];

/** exposure classes; most w/cm */
export const MOST_WATER_CEMENT_ROWS: readonly [string, number, string][] = [
  ["F1", 0.55, "from memory, ACI 318-19 Table 19.3.2.1"],
  ["f3", 0.4, "from memory, ACI 318-19 Table 19.3.2.1"],
  ["F1, S1", 0.5, "from memory, ACI 318-19 Table 19.3.2.1: the lower of two"],
  ["F2 W2", 0.45, "from memory, ACI 318-19 Table 19.3.2.1: the lower of two"],
];

const EN = "EN 206-1 Table 17, German edition";
const DIN = "DIN 1045-2, two German trade pages";

/** quantity, specified low and high, German upper end; low and high for a single result; working */
export const EN_206_SINGLE: readonly [
  quantity: string,
  low: number | undefined,
  high: number | undefined,
  german: boolean,
  least: number | undefined,
  most: number | undefined,
  source: string,
][] = [
  ["air", 4, undefined, false, 3.5, undefined, `${EN}: 4.0 − 0.5; no upper end`],
  ["air", 4.5, 8.5, false, 4, 9.5, `${EN}: 4.5 − 0.5 and 8.5 + 1.0`],
  ["air", 4.5, undefined, true, 4, 9.5, `${DIN}: upper end 4.5 + 4; ${EN}: + 1.0`],
  ["lightweight density", 1600, 1800, false, 1570, 1830, `${EN}: 30 kg/m³ either way`],
  ["w/c", undefined, 0.5, false, undefined, 0.52, `${EN}: 0.50 + 0.02`],
];
