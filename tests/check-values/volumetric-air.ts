/*
 * What the volumetric method is checked against. Each row names its source; "derived" rows are
 * worked by hand from the rows above them, with the working beside them.
 */
export const MANUAL_2019 = "ASTM C173 Table 1 as reproduced in a meter maker's manual (2019)";
export const MEMORY_TABLE = "from memory, ASTM C173 Table 1";
export const STUDY_GUIDE = "a concrete field-technician study guide (2026)";

/** pints, fluid ounces, litres, % to subtract. */
export const CORRECTION_ROWS: readonly [number, number, number, number, string][] = [
  [0.5, 8, 0.2, 0, MEMORY_TABLE],
  [1, 16, 0.5, 0, MEMORY_TABLE],
  [1.5, 24, 0.7, 0, MEMORY_TABLE],
  [2, 32, 0.9, 0, MANUAL_2019],
  [3, 48, 1.4, 0.3, MANUAL_2019],
  [4, 64, 1.9, 0.6, MANUAL_2019],
  [5, 80, 2.4, 0.9, MANUAL_2019],
];

/** amount, unit, % to subtract, between the rows; 0.3 × share of the way between two rows. */
export const BETWEEN_ROWS: readonly [number, "pt" | "oz" | "L", number, string][] = [
  [2.5, "pt", 0.15, "derived: half-way from 2 pt (0) to 3 pt (0.3)"],
  [40, "oz", 0.15, "derived: half-way from 32 oz (0) to 48 oz (0.3)"],
  [1.2, "L", 0.18, "derived: 0.3 × (1.2 − 0.9) / (1.4 − 0.9)"],
  [3.5, "pt", 0.45, "derived: 0.3 + 0.3 × 0.5"],
  [56, "oz", 0.45, "derived: 0.3 + 0.3 × (56 − 48) / 16"],
  [1.7, "L", 0.48, "derived: 0.3 + 0.3 × (1.7 − 1.4) / 0.5"],
  [4.9, "pt", 0.87, "derived: 0.6 + 0.3 × 0.9"],
  [2.49, "pt", 0, "under 2.5 pt nothing counts (same manual)"],
  [39, "oz", 0, "under 40 oz nothing counts (same manual)"],
  [1.19, "L", 0, "under 1.2 L nothing counts (same manual)"],
  [0, "pt", 0, "no alcohol, no correction (common practice)"],
];

/** readings, cups, pints; unrounded and reported air; or the state that is not a result. */
export const WORKED_TESTS: readonly {
  name: string;
  readings: [number, number, number?];
  cups?: number;
  pints?: number;
  unrounded?: number;
  air: number | "third reading" | "void";
  source: string;
}[] = [
  { name: "V1", readings: [5.5, 5.75], unrounded: 5.75, air: 5.75, source: STUDY_GUIDE },
  {
    name: "V2, before the third",
    readings: [5.5, 6.25],
    air: "third reading",
    source: STUDY_GUIDE,
  },
  { name: "V2", readings: [5.5, 6.25, 6.25], unrounded: 6.25, air: 6.25, source: STUDY_GUIDE },
  { name: "V3", readings: [6, 6], pints: 1, unrounded: 6, air: 6, source: "derived: 6.00 − 0" },
  {
    name: "V4",
    readings: [6, 6.25],
    pints: 3,
    unrounded: 5.95,
    air: 6,
    source: "derived: 6.25 − 0.30",
  },
  {
    name: "V5",
    readings: [7.5, 7.75],
    pints: 4,
    unrounded: 7.15,
    air: 7.25,
    source: "derived: 7.75 − 0.60",
  },
  {
    name: "V6",
    readings: [8, 8],
    pints: 5,
    unrounded: 7.1,
    air: 7,
    source: "derived: 8.00 − 0.90",
  },
  {
    name: "V7",
    readings: [8.25, 8.5],
    cups: 3,
    pints: 2,
    unrounded: 11.5,
    air: 11.5,
    source: "derived: 8.50 − 0 + 3 × 1.00",
  },
  {
    name: "V8",
    readings: [5, 5.5, 6],
    air: "void",
    source: "derived: 6.0 − 5.5 is more than 0.25",
  },
];
