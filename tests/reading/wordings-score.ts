import type { CellValue } from "../../src/measure/cell-value";
import type { FieldId } from "../../src/reading/fields";
import { recognise } from "../../src/reading/recognise";
import type { Wordings } from "./corpus/wordings";

const READINGS = [5.5, 6, 6.25, 5.75];
const YES_NO = ["N", "N", "Y", "N"];
const CLOCK = ["9:10", "10:25", "11:40", "13:05"];
const NAMES = ["A-1", "A-2", "B-3", "C-7"];
const NUMBERS = [4021, 4024, 4030, 4033];
const TEXTS = ["north", "south", "north", "pier 4"];

/** What such a column holds, in one system of units or the other. */
const CELLS: Readonly<Partial<Record<FieldId | "none", readonly CellValue[]>>> = {
  first: READINGS,
  second: READINGS,
  third: [null, null, 6.25, null],
  final: READINGS,
  cups: [0, 0, 1, 0],
  alcohol: [2, 2.5, 3, 2],
  lateAlcohol: [0, 0, 0.5, 0],
  foam: [0.5, 0, 1, 0],
  settle: [3, 4, 2, 3],
  packed: YES_NO,
  leak: YES_NO,
  air: READINGS,
  low: [4.5, 4.5, 4.5, 4.5],
  high: [7.5, 7.5, 7.5, 7.5],
  target: [6, 6, 6, 6],
  tolerance: [1.5, 1.5, 1.5, 1.5],
  water: [16, 16, 16, 16],
  alcoholStrength: [70, 70, 70, 70],
  inversion: [45, 50, 46, 45],
  longestInversion: [5, 5, 4, 5],
  roll: [60, 62, 60, 61],
  meter: ["RM-1", "RM-2", "RM-1", "RM-1"],
  meterCheck: ["2026-01-12", "2026-01-12", "2026-02-20", "2026-01-12"],
  bowlVolume: [0.075, 0.075, 0.075, 0.075],
  cupVolume: [20.8, 20.8, 20.8, 20.8],
  start: CLOCK,
  sampledFrom: CLOCK,
  sampledTo: CLOCK,
  batched: CLOCK,
  discharged: CLOCK,
  time: CLOCK,
  revolutions: [70, 82, 95, 88],
  date: ["2026-05-14", "2026-05-14", "2026-05-15", "2026-05-16"],
  sample: NAMES,
  load: NUMBERS,
  mix: ["LW-45", "LW-45", "LW-50", "LW-45"],
  method: ["C173", "C173", "C173", "C173"],
  repeatOf: [null, null, "A-1", null],
  checkOf: [null, null, "A-1", null],
  aggregate: ["lightweight", "lightweight", "lightweight", "lightweight"],
  aggregateSize: [0.75, 0.75, 0.75, 0.75],
  aggregateFactor: [0.3, 0.3, 0.3, 0.3],
  density: [116.2, 117, 115.8, 116.5],
  theoreticalDensity: [124, 124.2, 124.1, 124],
  gravimetricAir: [5.8, 6.1, 6.4, 6],
  densityTarget: [116, 116, 116, 116],
  densityLow: [113, 113, 113, 113],
  densityHigh: [119, 119, 119, 119],
  relativeYield: [1.01, 1, 0.99, 1],
  measureVolume: [0.25, 0.25, 0.25, 0.25],
  slump: [4, 4.25, 3.75, 5],
  nominalSlump: [4, 4, 4, 4],
  concreteTemperature: [72, 74, 71, 76],
  airTemperature: [64, 66, 70, 75],
  humidity: [45, 50, 62, 55],
  wind: [4, 6, 9, 12],
  none: TEXTS,
};

/** A header that did not come out as it means. */
export interface WordingMiss {
  readonly header: string;
  readonly expected: string;
  readonly got: string;
}

/** How the headers of a language came out. */
export interface WordingScore {
  readonly count: number;
  readonly wrong: readonly WordingMiss[];
  readonly asked: readonly WordingMiss[];
  readonly missed: readonly WordingMiss[];
}

/**
 * Recognises each header by itself, between two columns of its language that are none of ours, with what
 * such a column holds below it.
 */
export function scoreOfWordings(
  wordings: Wordings,
  beside: readonly [string, string],
): WordingScore {
  const wrong: WordingMiss[] = [];
  const asked: WordingMiss[] = [];
  const missed: WordingMiss[] = [];
  let count = 0;
  for (const [answer, list] of Object.entries(wordings)) {
    const [field, reversed] = answer.split(" ") as [FieldId | "none", string | undefined];
    for (const header of list.split(";").map((each) => each.trim().replace(/\s+/g, " "))) {
      count++;
      const column = { headers: [header], cells: CELLS[field]! };
      const others = beside.map((each) => ({ headers: [each], cells: CELLS.none! }));
      const found = recognise([others[0]!, column, others[1]!]).all[1]!;
      const miss = (got: string) => ({ header, expected: answer, got });
      if (found.state === "read") {
        const same =
          found.field === field && (found.opposite ?? false) === (reversed !== undefined);
        const got = `${found.field}${found.opposite ? " reversed" : ""}`;
        if (!same) wrong.push(miss(got));
      } else if (found.state === "asked") asked.push(miss(`asked ${found.candidates.join(" ")}`));
      else if (found.state === "unknown" && found.decides) {
        asked.push(miss(`may be ${found.mayBe.join(" ")}`));
      } else if (field !== "none") {
        missed.push(miss(found.state === "not ours" ? `not ours: ${found.guard}` : found.state));
      }
    }
  }
  return { count, wrong, asked, missed };
}
