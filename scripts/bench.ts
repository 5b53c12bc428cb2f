/*
 * Performance as ratios within one run: machines differ, ratios hardly do. Nothing here is asserted;
 * a change that doubles a ratio deserves a look.
 */
import "../tests/functions/custom-functions-runtime";
import { checkTable } from "../src/fieldsheet/check-table";
import { air } from "../src/functions/volumetric-air";
import { roundToStep } from "../src/measure/rounding";
import { correctedAir } from "../src/methods/volumetric-air/corrected-air";

const headers = [
  "Sample",
  "First reading",
  "Second reading",
  "Cups",
  "Alcohol (oz)",
  "Foam",
  "Air",
  "Low",
  "High",
];
const row = (i: number) => [
  `S-${i}`,
  5.5 + (i % 5) / 4,
  5.5 + (i % 5) / 4,
  0,
  48,
  1,
  5.25 + (i % 5) / 4,
  4.5,
  7.5,
];
const table = (rows: number) => ({ headers, rows: Array.from({ length: rows }, (_, i) => row(i)) });
const column = (rows: number) => Array.from({ length: rows }, (_, i) => [5.5 + (i % 5) / 4]);
const alcohol = { amount: 48, unit: "oz" as const };

/** Seconds of the quickest of a few runs. */
function seconds(run: () => unknown): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    run();
    return (performance.now() - start) / 1000;
  });
  return Math.min(...times);
}

const small = table(10_000);
const large = table(100_000);
const checkSmall = seconds(() => checkTable(small));
const checkLarge = seconds(() => checkTable(large));
const plain = seconds(() =>
  small.rows.forEach((cells) => correctedAir({ reading: cells[1] as number, alcohol })),
);
const spill = seconds(() => air(column(10_000), [[0]], [[48]], [["oz"]]));
const single = seconds(() =>
  column(10_000).forEach((cells) => air([cells], [[0]], [[48]], [["oz"]])),
);
const rounding = seconds(() =>
  column(10_000).forEach(([value]) => roundToStep(value! + 0.1, 0.25)),
);
const spreadsheetRounding = seconds(() =>
  column(10_000).map(([value]) => Math.round((value! + 0.1) * 4) / 4),
);

const ratios: readonly (readonly [string, number])[] = [
  ["check of 100,000 rows ÷ check of 10,000 rows (10 is linear)", checkLarge / checkSmall],
  ["check of a row ÷ its bare calculation", checkSmall / plain],
  ["10,000 single cells ÷ one spilled column of 10,000", single / spill],
  ["one spilled column of 10,000 ÷ the bare calculations", spill / plain],
  ["decimal rounding, half to even ÷ binary rounding, half up", rounding / spreadsheetRounding],
];
for (const [what, ratio] of ratios) console.log(`${ratio.toFixed(1).padStart(8)}  ${what}`);
