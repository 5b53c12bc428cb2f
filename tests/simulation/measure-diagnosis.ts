import type { SheetTable } from "../../src/reading/sheet-table";
import { PLAIN_SLIPS, soundResult } from "./plain-slips";
import { randomLayout, randomTest, type PlainTest } from "./plain-test";
import { Random } from "./random";
import { sheetOf } from "./sheet-of-tests";
import { checkedTable } from "../fieldsheet/checked";

/** Where the pseudo-random numbers begin; set before anything was measured. */
export const SEED = 20_260_609;

/** How often a slip that changed the number was found. */
export interface Score {
  readonly slip: string;
  readonly rows: number;
  /** Named as the likeliest cause. */
  readonly first: number;
  /** Named, but behind a slip that leads to the same number. */
  readonly named: number;
  readonly missed: number;
  /** For those named behind another: how often each of the others stood first. */
  readonly behind: Readonly<Record<string, number>>;
}

/** Makes records with one slip each and sees what the check says about them. */
export function measureDiagnosis(rowsOfEach: number, seed: number): Score[] {
  return Object.keys(PLAIN_SLIPS).map((slip, i) =>
    scoreOf(slip, rowsOfEach, new Random(seed + 1000 * i)),
  );
}

function scoreOf(slip: string, rows: number, random: Random): Score {
  const behind: Record<string, number> = {};
  let [first, missed] = [0, 0];
  for (let row = 0; row < rows; row += 1) {
    const causes = causesNamed(sheetWithSlip(slip, random));
    if (causes[0] === slip) first += 1;
    else if (causes.includes(slip)) behind[causes[0]!] = (behind[causes[0]!] ?? 0) + 1;
    else missed += 1;
  }
  const named = Object.values(behind).reduce((sum, count) => sum + count, 0);
  return { slip, rows, first, named, missed, behind };
}

/** Sheets of one test each are drawn until the slip can happen in one and changes its number. */
function sheetWithSlip(slip: string, random: Random): SheetTable {
  for (;;) {
    const layout = randomLayout(random);
    const sound = randomTest(random, layout);
    const wrong = PLAIN_SLIPS[slip]!(sound, random, layout);
    if (wrong && isPossible(wrong) && wrong.reported !== soundResult(wrong, sound)) {
      return sheetOf([wrong], layout, random);
    }
  }
}

/** Nobody reports less than no air, and no final reading lies off the scale. */
function isPossible({ reported, recordedFinal, correction, cups, readings }: PlainTest): boolean {
  const most = Math.max(...readings) + 1000 * cups;
  return reported >= 0 && recordedFinal >= 0 && recordedFinal <= 9000 && correction <= most;
}

/** The causes in the order in which the check names them. */
function causesNamed(sheet: SheetTable): string[] {
  const { findings } = checkedTable(sheet);
  return findings.flatMap(({ causes = [] }) => causes.map(({ id }) => id));
}

/** The scores as a table in plain text. */
export function scoreTable(scores: readonly Score[]): string {
  const lines = scores.map(({ slip, rows, first, named, missed, behind }) => {
    const others = Object.entries(behind)
      .sort(([, a], [, b]) => b - a)
      .map(([other, count]) => `${other} ${count}`);
    const share = `${((100 * first) / rows).toFixed(1)} %`;
    return [slip, String(rows), share, String(named), String(missed), others.join(", ")];
  });
  const head = ["slip", "rows", "named first", "named behind another", "missed", "behind"];
  const widths = head.map((title, i) =>
    Math.max(...[head, ...lines].map((line) => line[i]!.length), title.length),
  );
  return [head, ...lines]
    .map((line) =>
      line
        .map((cell, i) => cell.padEnd(widths[i]!))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
