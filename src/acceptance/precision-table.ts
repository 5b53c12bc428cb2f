/** Published precision near one value of the quantity measured. */
export interface PrecisionAt {
  /** The value that it was established at; absent where it holds for all. */
  readonly near?: number;
  /** Standard deviation. */
  readonly deviation: number;
  /** Two results should not differ by more: d2s, 2√2 deviations as published, rounded. */
  readonly difference: number;
}

/** Published precision of a test method. */
export interface PublishedPrecision {
  /** The method's number as people write it; the first is the one that we show. */
  readonly names: readonly [string, ...string[]];
  readonly unit: string;
  /** Whether the figures are shares of the value instead of amounts in its unit. */
  readonly ofValue: boolean;
  /** Values outside cannot be in the unit; they are taken for a slip of the unit. */
  readonly possible: readonly [from: number, to: number];
  /** Absent where the method has not established it. */
  readonly one?: readonly PrecisionAt[];
  readonly several: readonly PrecisionAt[];
  readonly source: "source-memory" | "source-memory-type-a";
}

const SLUMP_ONE: readonly PrecisionAt[] = [
  { near: 1.2, deviation: 0.23, difference: 0.65 },
  { near: 3.4, deviation: 0.38, difference: 1.07 },
  { near: 6.5, deviation: 0.4, difference: 1.13 },
];
const SLUMP_SEVERAL: readonly PrecisionAt[] = [
  { near: 1.2, deviation: 0.29, difference: 0.82 },
  { near: 3.4, deviation: 0.39, difference: 1.1 },
  { near: 6.5, deviation: 0.53, difference: 1.5 },
];
/** The millimetres of ASTM C143M are its own, rounded, and no conversions. */
const SLUMP_ONE_MM: readonly PrecisionAt[] = [
  { near: 30, deviation: 6, difference: 17 },
  { near: 85, deviation: 9, difference: 25 },
  { near: 160, deviation: 10, difference: 28 },
];
const SLUMP_SEVERAL_MM: readonly PrecisionAt[] = [
  { near: 30, deviation: 7, difference: 20 },
  { near: 85, deviation: 10, difference: 28 },
  { near: 160, deviation: 13, difference: 37 },
];

/**
 * Precision of the tests of fresh concrete. None of it was read in the standards in force; C173 is
 * the least sure. A method with an M measures in SI units, as ASTM numbers them; where the standard
 * gives a rounded SI pair of its own, that pair stands here and no conversion.
 */
export const PRECISION_TABLE: readonly PublishedPrecision[] = [
  {
    names: ["C173", "C173M", "C173/C173M", "T196", "T196M"],
    unit: "%",
    ofValue: true,
    possible: [0, 100],
    several: [{ deviation: 0.11, difference: 0.32 }],
    source: "source-memory",
  },
  {
    names: ["C231", "C231M", "C231/C231M", "T152", "T152M"],
    unit: "%",
    ofValue: false,
    possible: [0, 100],
    several: [{ deviation: 0.28, difference: 0.8 }],
    source: "source-memory-type-a",
  },
  {
    names: ["C138", "T121"],
    unit: "lb/ft³",
    ofValue: false,
    possible: [20, 400],
    one: [{ deviation: 0.65, difference: 1.85 }],
    several: [{ deviation: 0.82, difference: 2.31 }],
    source: "source-memory",
  },
  {
    names: ["C138M", "T121M"],
    unit: "kg/m³",
    ofValue: false,
    possible: [400, 6000],
    one: [{ deviation: 10.4, difference: 29.6 }],
    several: [{ deviation: 13.1, difference: 37 }],
    source: "source-memory",
  },
  {
    names: ["C143", "T119"],
    unit: "in",
    ofValue: false,
    possible: [0, 12],
    one: SLUMP_ONE,
    several: SLUMP_SEVERAL,
    source: "source-memory",
  },
  {
    names: ["C143M", "T119M"],
    unit: "mm",
    ofValue: false,
    possible: [0, 305],
    one: SLUMP_ONE_MM,
    several: SLUMP_SEVERAL_MM,
    source: "source-memory",
  },
  {
    names: ["C1064", "T309"],
    unit: "°F",
    ofValue: false,
    possible: [28, 212],
    one: [{ deviation: 0.5, difference: 1.3 }],
    several: [{ deviation: 0.7, difference: 1.9 }],
    source: "source-memory",
  },
  {
    names: ["C1064M", "T309M"],
    unit: "°C",
    ofValue: false,
    possible: [-2, 100],
    one: [{ deviation: 0.3, difference: 0.7 }],
    several: [{ deviation: 0.4, difference: 1.1 }],
    source: "source-memory",
  },
];
