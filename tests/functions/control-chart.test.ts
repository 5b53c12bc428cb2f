import { shown } from "./custom-functions-runtime";
import {
  chartCusum,
  chartEwma,
  chartLimits,
  chartSignals,
} from "../../src/functions/control-chart";
import { CUSUM, EWMA, INDIVIDUALS } from "../check-values/statistics";
import { expectAsPrinted } from "../check-values/worked";

const column = (values: readonly unknown[]) => values.map((value) => [value]);
const one = (value: unknown) => [[value]];
const cells = (run: () => unknown[][]) => shown(run) as unknown[][];

/** The same results with blanks, which people put for a test that was not made. */
const withBlanks = (values: readonly number[]) => [
  "",
  ...values.slice(0, 3),
  null,
  "-",
  ...values.slice(3),
];
const kept = <T>(rows: readonly T[]) => [...rows.slice(1, 4), ...rows.slice(6)];

test(`FRESH.CHART.LIMITS (${INDIVIDUALS.source}), also across, also with blanks`, () => {
  const { values } = INDIVIDUALS;
  for (const given of [column(values), [[...values]], column(withBlanks(values))]) {
    const [[lower, mean, upper]] = cells(() => chartLimits(given)) as [unknown[]];
    expectAsPrinted(lower, INDIVIDUALS.lower);
    expectAsPrinted(mean, INDIVIDUALS.mean);
    expectAsPrinted(upper, INDIVIDUALS.upper);
  }
});

test(`FRESH.CHART.EWMA (${EWMA.source}), blanks keep their place`, () => {
  const chart = (values: readonly unknown[]) =>
    cells(() => chartEwma(column(values), one(EWMA.lambda), one(EWMA.target), one(EWMA.deviation)));
  const plain = chart(EWMA.values);
  plain.forEach((row, i) => {
    expectAsPrinted(row[0], EWMA.smoothed[i]!);
    // The handbook takes 0.4201 for the root of 0.3 / 1.7, which is 0.42008.
    expect(Math.abs((row[1] as number) - Number(EWMA.lower))).toBeLessThan(0.0002);
    expect(Math.abs((row[2] as number) - Number(EWMA.upper))).toBeLessThan(0.0002);
  });
  const spaced = chart(withBlanks(EWMA.values));
  expect(kept(spaced)).toEqual(plain);
  expect([spaced[0], spaced[4], spaced[5]]).toEqual(Array(3).fill(["", "", ""]));
});

test(`FRESH.CHART.CUSUM (${CUSUM.source}), blanks keep their place`, () => {
  const chart = (values: readonly unknown[]) =>
    cells(() => chartCusum(column(values), one(CUSUM.target), one(CUSUM.k), one(CUSUM.h)));
  const plain = chart(CUSUM.values);
  plain.forEach(([high, low, signal], i) => {
    expectAsPrinted(high, CUSUM.high[i]!);
    expectAsPrinted(low, CUSUM.low[i]!);
    expect(signal).toBe(i < 13 ? "" : "high");
  });
  expect(kept(chart(withBlanks(CUSUM.values)))).toEqual(plain);
});

describe("FRESH.CHART.SIGNALS (NIST/SEMATECH e-Handbook 6.3.2, worked by hand)", () => {
  const limits = [[-3, 0, 3]];
  test.each<[unknown[], unknown[]]>([
    [
      [0, 3.1, 0],
      ["", "Beyond a control limit", ""],
    ],
    [
      [2.5, null, 3.5],
      ["", "", "Beyond a control limit; two of three near the same control limit"],
    ],
    [
      [-0.5, -0.3, "", -0.1, 0.1, 0.3, 0.5],
      ["", "", "", "", "", "", "Six in a row rising"],
    ],
    [
      [0.1, 0.3, 0.2, 0.4, 0.1, 0.2, 0.1, 0.3],
      [...Array(7).fill(""), "Eight in a row on one side of the mean"],
    ],
  ])("%j gives %j", (values, words) => {
    expect(cells(() => chartSignals(column(values), limits))).toEqual(column(words));
    expect(cells(() => chartSignals([values], column(limits[0]!)))).toEqual([words]);
  });

  test("without limits they are worked out from the results", () => {
    const values = [6, 6.25, 6, 6.25, 6, 6.25, 6, 6.25, 9, 6, 6.25, 6, 6.25, 6, 6.25];
    const signals = cells(() => chartSignals(column(values)));
    // Mean 6.317, so the first eight lie below it; upper limit 6.317 + 3 × 0.625 / 1.128 = 7.979.
    expect(signals.flatMap(([words], i) => (words === "" ? [] : [[i + 1, words]]))).toEqual([
      [8, "Eight in a row on one side of the mean"],
      [9, "Beyond a control limit"],
    ]);
  });
});

test("a result that cannot be read shows why in its place, and the others are worked out", () => {
  const values = column([6, "wet", 7, { code: "#N/A" }]);
  expect(cells(() => chartEwma(values, one(0.5), one(6), one(1)))).toEqual([
    [6, expect.closeTo(6 - Math.sqrt(3)), expect.closeTo(6 + Math.sqrt(3))],
    ["#VALUE!", "#VALUE!", "#VALUE!"],
    [6.5, expect.closeTo(6 - Math.sqrt(3)), expect.closeTo(6 + Math.sqrt(3))],
    ["#VALUE!", "#VALUE!", "#VALUE!"],
  ]);
});

test("a row gives its answer on its side", () => {
  expect(cells(() => chartCusum([[6, 7]], one(6), one(0.5), one(5)))).toEqual([
    [0, 0.5],
    [0, 0],
    ["", ""],
  ]);
});

test("nothing but blanks gives blanks", () => {
  expect(cells(() => chartEwma(column([null, ""])))).toEqual(Array(2).fill(["", "", ""]));
  expect(cells(() => chartSignals(column([null, ""])))).toEqual([[""], [""]]);
});

const SERIES = column([6, 7, 6]);
test.each<[string, () => unknown[][], RegExp]>([
  ["limits of one value", () => chartLimits(one(6)), /^#N\/A A control chart needs two values/],
  ["limits of none", () => chartLimits(one(null)), /^#N\/A A control chart needs two values/],
  [
    "limits with a text",
    () => chartLimits(column([6, 7, "wet"])),
    /^#VALUE! Values, cell 3: “wet” is not a number/,
  ],
  [
    "limits with an error",
    () => chartLimits(column([6, "#N/A", 7])),
    /^#VALUE! Values, cell 2: the cell holds the error #N\/A/,
  ],
  [
    "a table",
    () =>
      chartLimits([
        [6, 7],
        [7, 6],
      ]),
    /^#VALUE! Values: the range has 2 rows and 2 columns\. Give the results of one series/,
  ],
  ["EWMA of one value", () => chartEwma(one(6)), /^#N\/A A control chart needs two values/],
  [
    "EWMA with lambda 0",
    () => chartEwma(SERIES, one(0)),
    /^#VALUE! Lambda: a weight of 0 cannot be/,
  ],
  [
    "EWMA with lambda 2",
    () => chartEwma(SERIES, one(2)),
    /^#VALUE! Lambda: a weight of 2 cannot be/,
  ],
  ["EWMA with a text", () => chartEwma(SERIES, one("x")), /^#VALUE! Lambda: “x” is not a number/],
  [
    "EWMA with deviation 0",
    () => chartEwma(SERIES, one(0.3), one(6), one(0)),
    /^#VALUE! Deviation: 0 is not a standard deviation/,
  ],
  [
    "EWMA with two targets",
    () => chartEwma(SERIES, one(0.3), column([6, 7])),
    /^#VALUE! Target: 2 cells are given\. Give a single value/,
  ],
  [
    "CUSUM without a target",
    () => chartCusum(SERIES, one(null), one(0.5), one(4)),
    /^#VALUE! Target: nothing is given/,
  ],
  [
    "CUSUM with k below 0",
    () => chartCusum(SERIES, one(6), one(-1), one(4)),
    /^#VALUE! K: an allowance of -1 cannot be/,
  ],
  [
    "CUSUM with h 0",
    () => chartCusum(SERIES, one(6), one(0.5), one(0)),
    /^#VALUE! H: 0 is not a decision value/,
  ],
  [
    "signals with two limits",
    () => chartSignals(SERIES, [[5, 7]]),
    /^#VALUE! Limits: lower limit, mean and upper limit are needed/,
  ],
  [
    "signals with limits crossed",
    () => chartSignals(SERIES, [[7, 6, 5]]),
    /^#VALUE! Limits: lower limit, mean/,
  ],
  [
    "signals with a text for a limit",
    () => chartSignals(SERIES, [[5, "x", 7]]),
    /^#VALUE! Limits: “x” is not a number/,
  ],
  ["signals of one value", () => chartSignals(one(6)), /^#N\/A A control chart needs two values/],
])("%s is refused", (_what, run, sentence) => {
  expect(shown(run)).toMatch(sentence);
});
