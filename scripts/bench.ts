/*
 * Performance as ratios within one run: machines differ, ratios hardly do. Each pair is warmed up and run
 * in turn, and the median of its rounds is printed beside what it should be. Nothing here is asserted; a
 * change that doubles a ratio deserves a look.
 */
import "../tests/functions/custom-functions-runtime";
import { checkTable } from "../src/fieldsheet/check-table";
import { check, findings } from "../src/functions/field-sheet";
import { air } from "../src/functions/volumetric-air";
import { roundToStep } from "../src/measure/rounding";
import { bareAir } from "./bench/bare-air";
import { median, medianRatio, processorMicroseconds, type Rounds } from "./bench/in-turn";

const ROWS = 100_000;
const CELLS = 10_000;
const SHORT: Rounds = { warm: 20, timed: 15 };
const LONG: Rounds = { warm: 3, timed: 7 };

const HEADERS = [
  ...["Sample", "Date", "Mix", "First reading", "Second reading", "Third reading"],
  ...["Cups", "Alcohol (oz)", "Foam", "Air", "Low", "High"],
];
const row = (i: number) => {
  const reading = 5.5 + (i % 5) / 4;
  const day = 46_000 + Math.floor(i / 20);
  return [`S-${i}`, day, "A-4000", reading, reading, null, 0, 48, 1, reading - 0.25, 4.5, 7.5];
};
const rows = (count: number) => Array.from({ length: count }, (_, i) => row(i));
const column = (cell: (i: number) => number) => Array.from({ length: ROWS }, (_, i) => [cell(i)]);

const sheet = rows(ROWS);
const text = JSON.stringify(sheet);
const few = rows(ROWS / 10);
const readings = column((i) => 5.5 + (i % 5) / 4);
const cups = column((i) => i % 2);
const ounces = column((i) => 40 + 8 * (i % 4));
const unrounded = readings.map(([value]) => value! + 0.1);

const parse = () => JSON.parse(text) as unknown;
const cells = () => {
  for (let i = 0; i < CELLS; i++) air([[6]], [[1]], [[48]], [["oz"]]);
};

const figures: readonly (readonly [what: string, goal: string, figure: () => number])[] = [
  [
    "FRESH.AIR over 100,000 rows ÷ a bare loop with the same checks and arithmetic",
    "4",
    () =>
      medianRatio(
        () => air(readings, cups, ounces, [["oz"]]),
        () => bareAir(readings, cups, ounces),
        SHORT,
      ),
  ],
  [
    "FRESH.AIR in one cell, µs of processor time",
    "2.5",
    () => {
      const times = Array.from({ length: 35 }, () => processorMicroseconds(cells) / CELLS);
      return median(times.slice(20));
    },
  ],
  [
    "rounding to a step, half to even ÷ Math.round, half up",
    "–",
    () =>
      medianRatio(
        () => unrounded.map((value) => roundToStep(value, 0.25)),
        () => unrounded.map((value) => Math.round(value * 4) / 4),
        SHORT,
      ),
  ],
  [
    "FRESH.CHECK of 100,000 × 12 ÷ JSON.parse of the same",
    "5",
    () => medianRatio(() => check([HEADERS], sheet), parse, LONG),
  ],
  [
    "FRESH.FINDINGS of the same ÷ JSON.parse of it",
    "6",
    () => medianRatio(() => findings([HEADERS], sheet), parse, LONG),
  ],
  [
    "check of 100,000 rows ÷ check of 10,000 rows (10 is linear)",
    "10",
    () =>
      medianRatio(
        () => checkTable({ headers: HEADERS, rows: sheet }),
        () => checkTable({ headers: HEADERS, rows: few }),
        LONG,
      ),
  ],
];
for (const [what, goal, figure] of figures)
  console.log(`${figure().toFixed(1).padStart(8)}  (goal ${goal})  ${what}`);
const megabytes = process.resourceUsage().maxRSS / 1024;
console.log(`${megabytes.toFixed(0).padStart(8)}  most memory held in this run, MB`);
