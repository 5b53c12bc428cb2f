import { mean } from "simple-statistics";
import { shown } from "./custom-functions-runtime";
import { strengthAccept, strengthRequired, strengthWithinTest } from "../../src/functions/strength";
import { STRENGTH_ACCEPT, STRENGTH_REQUIRED, STRENGTH_WITHIN } from "../check-values/strength";
import { expectAsPrinted } from "../check-values/worked";
import { checkRefused, checkWorked } from "./one-cell";

const column = (values: readonly unknown[]) => values.map((value) => [value]);

describe("FRESH.STRENGTH.ACCEPT", () => {
  test.each(STRENGTH_ACCEPT)("%j for %s %s (%#)", (results, specified, units, said) => {
    const accept = (given: unknown[][]) =>
      shown(() => strengthAccept(given, [[specified]], [[units]]));
    expect(accept(column(results))).toEqual(column(said));
    expect(accept([results])).toEqual([said]);
  });

  test("takes a column of one specified strength", () => {
    const accepted = () => strengthAccept(column([4100, 4200]), column([4000, 4000]));
    expect(shown(accepted)).toEqual(column(["accepted", "accepted"]));
  });

  test("a result that cannot be read is an error where it stands and in the means with it", () => {
    const results = column([4100, "broken", 4200, 4300, 4400, 4500]);
    expect(shown(() => strengthAccept(results, [[4000]]))).toEqual(
      column(["accepted", "#VALUE!", "#N/A", "#N/A", "accepted", "accepted"]),
    );
  });

  test.each<[unknown[][], unknown[][], unknown, RegExp]>([
    [column([4100, 4200]), column([4000, 3000]), null, /^#VALUE! Specified: .*more than one spec/],
    [
      [
        [1, 2],
        [3, 4],
      ],
      [[4000]],
      null,
      /^#VALUE! Results: the range has 2 rows and 2 columns. Give the results of one series/,
    ],
    [column([4100, 4200]), [[null]], null, /^#VALUE! Specified: nothing is given/],
    [
      column([28, 31]),
      [[25]],
      null,
      /^#VALUE! Specified: a strength of 25 psi cannot be. Give "si"/,
    ],
    [
      column([4100, 4200]),
      [[4000]],
      "si",
      /^#VALUE! Specified: a strength of 4000 MPa cannot be. Give "us"/,
    ],
    [column([4100, 4200]), [[4000]], "psi", /^#VALUE! Units: “psi” is not a system of units/],
  ])("of %j for %j in %j is refused: %s", (results, specified, units, sentence) => {
    expect(shown(() => strengthAccept(results, specified, [[units]]))).toMatch(sentence);
  });
});

checkWorked("STRENGTH.REQUIRED", strengthRequired, STRENGTH_REQUIRED);
checkRefused("STRENGTH.REQUIRED", strengthRequired, [
  [
    [4000, 420, 14],
    /^#N\/A Tests: a standard deviation from so few tests \(14\) is not enough; at least 15/,
  ],
  [[4000, 420, 20.5], /^#VALUE! Tests: 20.5 is not a number of tests/],
  [[4000, -1, 20], /^#VALUE! Deviation: a standard deviation of -1 psi cannot be/],
  [[4000, 3, 30], /^#VALUE! Deviation: a standard deviation of 3 psi cannot be. Give "si"/],
  [[30, 420, 30, "si"], /^#VALUE! Deviation: a standard deviation of 420 MPa cannot be. Give "us"/],
  [[30, 3.5, 30], /^#VALUE! Specified: a strength of 30 psi cannot be. Give "si"/],
]);

describe("FRESH.STRENGTH.WITHINTEST", () => {
  test.each(STRENGTH_WITHIN)("of %j is %s (%s)", (cylinders, printed) => {
    expectAsPrinted(
      shown(() => strengthWithinTest(cylinders)),
      printed,
    );
  });

  test("is 3.30 % of the mean in the worked pairs (derived from ACI 214R: 141.8 / 4,300)", () => {
    const [pairs] = STRENGTH_WITHIN[0]!;
    const deviation = shown(() => strengthWithinTest(pairs)) as number;
    expectAsPrinted((deviation / mean(pairs.flat() as number[])) * 100, "3.30");
  });

  test.each<[unknown[][], RegExp]>([
    [[[4100], [4200]], /^#VALUE! Cylinders: the number of columns is 1/],
    [[[1, 2, 3, 4]], /^#VALUE! Cylinders: the number of columns is 4/],
    [
      [
        [4100, 4200],
        [4100, null],
      ],
      /^#VALUE! Cylinders: row 2 holds a single cylinder/,
    ],
    [[[null, null]], /^#VALUE! Cylinders: the range is blank/],
    [[[4100, "x"]], /^#VALUE! Cylinders, row 1: “x” is not a number/],
    [[[4100, 0]], /^#VALUE! Cylinders, row 1: 0 cannot be/],
  ])("of %j is refused: %s", (cylinders, sentence) => {
    expect(shown(() => strengthWithinTest(cylinders))).toMatch(sentence);
  });
});
