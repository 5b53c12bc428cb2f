import { checkRefused, inOneCell } from "./one-cell";
import { shown } from "./custom-functions-runtime";
import { agreementLimitOfResults, agreementOfResults } from "../../src/functions/agreement";

const MEMORY = "precision from memory, to be verified against the standard in force";

test.each([
  [[5.5, 6.3, "C231"], true, 0.8],
  [[5.5, 6.4, "C231", "several"], false, 0.8],
  // 32 % of the mean, 5.95.
  [[5, 6.9, "C173"], true, 1.904],
  [[5, 7, "ASTM C173"], false, 1.92],
  [[142, 144, "C138", "one"], false, 1.85],
  [[142, 144, "C138"], true, 2.31],
  [[2275, 2310, "C138M", 1], false, 29.6],
  [[2275, 2310, "C138M", 2], true, 37],
  // Near 3.9 in: 1.07 + 0.06 × 0.5 / 3.1.
  [[3.4, 4.4, "C143", "one"], true, 1.0797],
  [[70, 72, "C1064"], false, 1.9],
  [[20, 21, "C1064M"], true, 1.1],
])(`FRESH.AGREEMENT of %j is %s, its limit %s (${MEMORY})`, (given, agree, limit) => {
  expect(inOneCell(agreementOfResults, given)).toBe(agree);
  expect(inOneCell(agreementLimitOfResults, given)).toBeCloseTo(limit, 3);
});

describe.each([
  ["AGREEMENT", agreementOfResults],
  ["AGREEMENT.LIMIT", agreementLimitOfResults],
])("%s", (name, run) => {
  checkRefused(name, run, [
    [["x", 6, "C231"], /^#VALUE! A: “x” is not a number/],
    [[6, null, "C231"], /^#VALUE! B: nothing is given/],
    [[6, 6, null], /^#VALUE! Method: nothing is given/],
    [[6, 6, "slump"], /^#VALUE! Method: no precision is on file for “slump”/],
    [[6, 6, "C231", "both"], /^#VALUE! Operators: “both” does not say who made the tests/],
    [
      [6, 6.5, "C173", "one"],
      /^#N\/A Operators: no precision is established for one operator by C173/,
    ],
    [[2275, 142, "C138"], /^#VALUE! A: 2275 lb\/ft³ cannot be a result by C138/],
    [[-1, 6, "C231"], /^#VALUE! A: -1 % cannot be a result by C231/],
  ]);

  test("a blank pair gives a blank", () => {
    expect(inOneCell(run, [null, "", "C231"])).toBe("");
  });
});

test("pairs down two columns, one bad row among them", () => {
  const a = [[6], ["x"], [null], [5]];
  const b = [[6.5], [6], [null], [7]];
  expect(shown(() => agreementOfResults(a, b, [["C231"]]))).toEqual([
    [true],
    ["#VALUE!"],
    [""],
    [false],
  ]);
});
