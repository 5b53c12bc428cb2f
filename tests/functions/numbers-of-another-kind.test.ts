import { shown } from "./custom-functions-runtime";
import { agreementOfResults } from "../../src/functions/agreement";
import { airBoundsOf } from "../../src/functions/air-bounds";
import { bias } from "../../src/functions/bias";
import {
  chartCusum,
  chartEwma,
  chartLimits,
  chartSignals,
} from "../../src/functions/control-chart";
import { airExpected, densityExpected } from "../../src/functions/density-from-air";
import { dispositionOfLoad, limitsForSingleResult } from "../../src/functions/disposition";
import { evaporationRate } from "../../src/functions/evaporation";
import { airFullMix, airMortar, airPressure } from "../../src/functions/pressure-air";
import { registerStateOf } from "../../src/functions/register";
import {
  acceptByCheckTest,
  chanceWithinSpecification,
  compareWithSpecification,
  guardedSpecification,
  limitsFromTarget,
  marginToSpecification,
} from "../../src/functions/specification";
import { strengthWithinTest } from "../../src/functions/strength";
import { air, levelStable } from "../../src/functions/volumetric-air";
import { waterCement } from "../../src/functions/water-cement";

type Run = (...given: any[][][]) => unknown[][];
type Row = readonly [run: Run, given: readonly unknown[], told: RegExp];

/** A cell as a range of one, a list as a column, a table as it is. */
function ranges(given: readonly unknown[]): any[][][] {
  return given.map((one) => {
    if (!Array.isArray(one)) return [[one]];
    return one.some(Array.isArray) ? (one as any[][]) : one.map((cell: unknown) => [cell]);
  });
}

const told = ([run, given, sentence]: Row) =>
  expect(shown(() => run(...ranges(given)))).toMatch(sentence);
const named = (rows: readonly Row[]) =>
  rows.map((row) => [row[0].name, JSON.stringify(row[1]), row] as const);

/*
 * A cell with a percentage format holds 0.045 and shows 4.5 % (how spreadsheets keep percentages). No air
 * content, limit or reading in percent is below 0.1: the scale of the meter has steps of 0.5 (Louisiana DOTD
 * TR 202) and a gauge is read to 0.1 (a study guide).
 */
test.each(
  named([
    [airPressure, [0.04, 0.3], /Gauge reading: 0.04 looks like 4 %/],
    [airPressure, [4, 0.003], /Aggregate correction factor: 0.003 looks like 0.3 %/],
    [airFullMix, [0.06, 20, 5], /Air of the sieved sample: 0.06 looks like 6 %/],
    [airMortar, [0.06, 20, 14], /Air of the sieved sample: 0.06 looks like 6 %/],
    [densityExpected, [145, 0.06, 8], /Reference air: 0.06 looks like 6 %/],
    [densityExpected, [145, 6, 0.08], /Air: 0.08 looks like 8 %/],
    [airExpected, [145, 0.06, 142], /Reference air: 0.06 looks like 6 %/],
    [limitsFromTarget, [0.06], /Target: 0.06 looks like 6 %/],
    [limitsFromTarget, [6, 0.015], /Tolerance: 0.015 looks like 1.5 %/],
    [limitsFromTarget, [6, 1, 0.015], /Tolerance above: 0.015 looks like 1.5 %/],
    [compareWithSpecification, [0.06, 4.5, 7.5], /0.06 looks like 6 %/],
    [compareWithSpecification, [6, 0.045, 0.075], /0.045 looks like 4.5 %/],
    [marginToSpecification, [6, null, 0.075], /0.075 looks like 7.5 %/],
    [acceptByCheckTest, [7.75, 4.5, 7.5, 0.06], /0.06 looks like 6 %/],
    [dispositionOfLoad, [0.0775, 4.5, 7.5], /0.0775 looks like 7.75 %/],
    [chanceWithinSpecification, [7.25, 4.5, 7.5, 0.0028], /Deviation: 0.0028 looks like 0.28 %/],
    [chanceWithinSpecification, [0.0725, 0.045, 0.075], /Value: 0.0725 looks like 7.25 %/],
    [guardedSpecification, [4.5, 7.5, 0.05, 0.0028], /Deviation: 0.0028 looks like 0.28 %/],
    [agreementOfResults, [0.05, 0.069, "C231"], /A: 0.05 looks like 5 %/],
    [limitsForSingleResult, ["air", 0.045, 0.085], /Low: 0.045 looks like 4.5 %/],
    [
      levelStable,
      [
        [1, 2, 3, 4],
        [0.07, 0.06, 0.055, 0.055],
      ],
      /Levels: 0.07 looks like 7 %/,
    ],
    [chartLimits, [[6, 0.065, 7]], /0.065 looks like 6.5 %/],
    [chartSignals, [[6, 7.75], [[0.045, 0.06, 0.075]]], /0.045 looks like 4.5 %/],
    [chartEwma, [[6, 7], 0.3, 0.06, 0.28], /0.06 looks like 6 %/],
    [chartEwma, [[6, 7], 0.3, 6, 0.0028], /Deviation: 0.0028 looks like 0.28 %/],
    [chartCusum, [[6, 7], 0.06, 0.25, 1], /0.06 looks like 6 %/],
    [chartCusum, [[6, 7], 6, 0.0025, 1], /K: 0.0025 looks like 0.25 %/],
    [
      bias,
      [
        [6.25, 0.06, 5.5, 5],
        ["A", "B", "A", "B"],
      ],
      /0.06 looks like 6 %/,
    ],
    [air, [6, 0, 16, "oz", 0.0025], /Step: 0.0025 looks like 0.25 %/],
    [evaporationRate, [87, 80, 1, 12], /Humidity: a humidity of 1 looks like 100 %/],
  ]),
)("%s of %s is not computed from a share of one", (_, __, row) => told(row));

// All in shares of one unit: nothing is mixed, and the answer is right as it stands (derived).
test.each<[Run, unknown[], unknown]>([
  [compareWithSpecification, [0.06, 0.045, 0.075], "within"],
  [compareWithSpecification, [0.47, null, 0.45], "above"],
  [limitsFromTarget, [0.06, 0.015], [[0.045, 0.075]]],
  [airPressure, [4, 0], 4],
  [airPressure, [4, 0.05], 3.95],
  [
    levelStable,
    [
      [0, 2],
      [0, 0.25],
    ],
    2,
  ],
])("%p of %j is %j", (run, given, result) => {
  expect(shown(() => run(...ranges(given)))).toEqual(result);
});

/*
 * Numbers of another kind than the argument asks for, each of which gave an answer. What no concrete, meter or
 * register can have is our own choice, beside the sentence.
 */
test.each(
  named([
    [waterCement, [250, null, null, 611, 45], /Limit: a limit of w\/cm of 45 cannot be/],
    [waterCement, [250, null, null, 611, "45%"], /Limit: a limit of w\/cm of 45 cannot be/],
    [waterCement, [250, null, null, 611, 0], /Limit: a limit of w\/cm of 0 cannot be/],
    [limitsForSingleResult, ["w/c", null, 45], /High: a limit of w\/cm of 45 cannot be/],
    [limitsForSingleResult, ["w/c", 0.45], /High: No limit is given/],
    [
      limitsForSingleResult,
      ["lightweight density", 100, 112],
      /Low: a density of 100 kg\/m³ cannot be/,
    ],
    [registerStateOf, ["M", 46_100, [["M", 46_000]], 365], /Interval: an interval of 365 months/],
    [strengthWithinTest, [[[4230, 29.5]]], /row 1 holds 29.5 and 4230, which cannot be/],
    [
      strengthWithinTest,
      [
        [
          [1, 4230, 4390],
          [2, 4360, 4160],
        ],
      ],
      /row 1 holds 1 and 4390, which cannot be/,
    ],
    [air, [6, 0, 16, "oz", 100], /Step: no air content is reported in steps of 100 %/],
    [
      dispositionOfLoad,
      [3, 5, 7, "preliminary sample", null, 20 / 1440, 40],
      /Minutes: 0.0138888889 is what a spreadsheet makes of 20:00/,
    ],
    [
      levelStable,
      [
        [1 / 1440, 2 / 1440, 3 / 1440],
        [5, 5, 5],
      ],
      /Minutes: .* makes of 3:00/,
    ],
    [
      levelStable,
      [
        [0, 60, 120, 180],
        [7, 6, 6, 6],
      ],
      /Minutes: “180” .* 180 min or 180 s/,
    ],
    [airBoundsOf, [0, 0, "64 oz"], /The air content comes out at -0.6 %, below zero/],
  ]),
)("%s of %s is refused", (_, __, row) => told(row));
