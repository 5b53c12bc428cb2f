/*
 * Performance as ratios within one run: machines differ, ratios hardly do. Each pair is warmed up and run
 * in turn, and the median of its rounds is printed beside what it should be. Nothing here is asserted; a
 * change that doubles a ratio deserves a look. Every run is kept in docs/benchmark.md.
 */
import "../tests/functions/custom-functions-runtime";
import { spawnSync } from "node:child_process";
import { checkTable } from "../src/fieldsheet/check-table";
import { check, findings } from "../src/functions/field-sheet";
import { air } from "../src/functions/volumetric-air";
import { bareAir } from "./bench/bare-air";
import { gridRatio } from "./bench/grid-formulas";
import { median, medianRatio, processorMicroseconds, type Rounds } from "./bench/in-turn";
import { keepRun } from "./bench/keep-run";
import { longestStep } from "./bench/longest-step";
import { checkLongSheet, type LongSheet } from "./bench/long-sheet";
import { HEADERS, rowsOf } from "./bench/sheet";

const ROWS = 100_000;
const CELLS = 10_000;
const SHORT: Rounds = { warm: 20, timed: 15 };
const LONG: Rounds = { warm: 3, timed: 7 };
const LONG_SHEET = "long-sheet";

async function main(): Promise<void> {
  const column = (cell: (i: number) => number) => Array.from({ length: ROWS }, (_, i) => [cell(i)]);
  const [readings, cups] = [column((i) => 5.5 + (i % 5) / 4), column((i) => i % 2)];
  const ounces = column((i) => 40 + 8 * (i % 4));
  const cells = () => {
    for (let i = 0; i < CELLS; i++) air([[6]], [[1]], [[48]], [["oz"]]);
  };
  const ofCells = () => processorMicroseconds(cells) / CELLS;
  const kept: number[] = [];
  const figure = (value: number, goal: string, what: string) => {
    kept.push(value);
    console.log(`${value.toFixed(1).padStart(8)}  (goal ${goal})  ${what}`);
  };

  figure(
    medianRatio(
      () => air(readings, cups, ounces, [["oz"]]),
      () => bareAir(readings, cups, ounces),
      SHORT,
    ),
    "4",
    "FRESH.AIR over 100,000 rows ÷ a bare loop with the same checks and arithmetic",
  );
  const times = Array.from({ length: 35 }, ofCells).slice(20);
  figure(median(times), "2.5", "FRESH.AIR in one cell, µs of processor time");
  const sheet = rowsOf(ROWS);
  const text = JSON.stringify(sheet);
  const parse = () => JSON.parse(text) as unknown;
  const ratioToParse = (run: () => unknown) => medianRatio(run, parse, LONG);
  figure(
    ratioToParse(() => check([HEADERS], sheet)),
    "5",
    "FRESH.CHECK of 100,000 × 12 ÷ JSON.parse of the same",
  );
  figure(
    ratioToParse(() => findings([HEADERS], sheet)),
    "6",
    "FRESH.FINDINGS of the same ÷ JSON.parse of it",
  );
  const few = rowsOf(ROWS / 10);
  const checked = (rows: typeof few) => () => checkTable({ headers: HEADERS, rows });
  figure(
    medianRatio(checked(sheet), checked(few), LONG),
    "10",
    "check of 100,000 rows ÷ check of 10,000 rows (10 is linear)",
  );
  figure(longestStep(100_000), "50", "longest step of the pane's check at 100,000 rows, ms");
  figure(longestStep(300_000), "50", "longest step of the pane's check at 300,000 rows, ms");
  const { ratio, megabytes } = ofLongSheet();
  figure(ratio, "6", "check of 900,000 rows ÷ JSON.parse of them");
  figure(megabytes, "1000", "most memory held by that check, its rows among it, MB");
  figure(
    await gridRatio(),
    "–",
    "FRESH.AIR in 10,000 cells of the workbench ÷ plain formulas there",
  );
  keepRun(kept);
}

/** Measured in a process of its own, so that nothing else is in its memory. */
function ofLongSheet(): LongSheet {
  const { stdout } = spawnSync(process.execPath, [__filename, LONG_SHEET], { encoding: "utf8" });
  return JSON.parse(stdout) as LongSheet;
}

if (process.argv[2] === LONG_SHEET) console.log(JSON.stringify(checkLongSheet()));
else void main();
