import { airBoundsOf } from "../../src/functions/air-bounds";
import { bias } from "../../src/functions/bias";
import { airExpected, densityExpected } from "../../src/functions/density-from-air";
import { dispositionOfLoad, limitsForSingleResult } from "../../src/functions/disposition";
import { registerStateOf } from "../../src/functions/register";
import { testsDueFor } from "../../src/functions/tests-due";
import { waterCement } from "../../src/functions/water-cement";
import * as decided from "../check-values/decisions";
import { expectAsPrinted } from "../check-values/worked";
import { shown } from "./custom-functions-runtime";
import { checkRefused, checkWorked, inOneCell } from "./one-cell";

const column = (cells: readonly unknown[]) => cells.map((cell) => [cell]);
const row = (run: (...given: any[][][]) => unknown[][], given: readonly unknown[]) =>
  (shown(() => run(...given.map((value) => [[value]]))) as unknown[][])[0];

checkWorked(
  "DENSITY.EXPECTED",
  densityExpected,
  decided.DENSITY_EXPECTED.map(([a, b, c, printed, source]) => [[a, b, c], printed, source]),
);
checkWorked(
  "AIR.EXPECTED",
  airExpected,
  decided.AIR_EXPECTED.map(([a, b, c, printed, source]) => [[a, b, c], printed, source]),
);

describe("FRESH.DISPOSITION", () => {
  test.each(decided.DISPOSITIONS)("%s in %s to %s by %s with %j: %s (%s)", (...given) => {
    const [first, low, high, rule, more, decision] = given;
    const { second, minutesLeft, revolutionsLeft, far } = more;
    expect(
      inOneCell(dispositionOfLoad, [
        first,
        low ?? null,
        high ?? null,
        rule ?? null,
        second ?? null,
        minutesLeft ?? null,
        revolutionsLeft ?? null,
        far ?? null,
      ]),
    ).toBe(decision);
  });
});
checkRefused("DISPOSITION", dispositionOfLoad, [
  [[8, null, null], /^#VALUE! No limit is given/],
  [[8, 7, 4], /^#VALUE! The low limit, 7, lies above the high limit, 4/],
  [[8, 4.5, 7.5, "twice"], /^#VALUE! Rule: “twice” is not a rule that is held here/],
  [[8, 4.5, 7.5, null, null, null, null, -1], /^#VALUE! Far: a result cannot lie -1 outside/],
]);

describe("FRESH.SPEC.SINGLE", () => {
  test.each(decided.EN_206_SINGLE)("%s from %s to %s, %s: %s to %s (%s)", (...given) => {
    const [quantity, low, high, german, least, most] = given;
    expect(row(limitsForSingleResult, [quantity, low ?? null, high ?? null, german])).toEqual([
      least ?? "",
      most ?? "",
    ]);
  });
});

describe("FRESH.AIR.BOUNDS", () => {
  test.each(decided.AIR_BOUNDS)("%j against %j: %s to %s, %s (%s)", (...given) => {
    const [{ reading, cups, alcohol, final }, { low, high }, least, most, verdict] = given;
    const cells = [reading, cups, alcohol?.amount, alcohol?.unit, low, high, final];
    expect(
      row(
        airBoundsOf,
        cells.map((cell) => cell ?? null),
      ),
    ).toEqual([least, most ?? "", verdict ?? ""]);
  });
});

describe("FRESH.BIAS", () => {
  test.each(decided.BIASES)("A against B: $difference ($source)", (worked) => {
    const [header, a] = shown(() =>
      bias(
        column(worked.tests.map(([value]) => value)),
        column(worked.tests.map(([, who]) => who)),
        column(worked.tests.map(([, , mix]) => mix)),
        [[worked.paired ?? null]],
      ),
    ) as unknown[][];
    expect(header).toEqual(["who", "tests", "difference", "standard error", "t", "p"]);
    expect(a![0]).toBe("A");
    expectAsPrinted(a![2], worked.difference);
    expectAsPrinted(a![3], worked.standardError);
    expectAsPrinted(a![4], worked.t);
  });

  test("blanks are passed over, and lying rows are taken as columns", () => {
    const air = [6, null, 6.5, 5, 5.5];
    const who = ["A", "A", "A", "B", "B"];
    const lines = shown(() => bias([air], [who])) as unknown[][];
    expect(lines.slice(1).map((line) => line.slice(0, 3))).toEqual([
      ["A", 2, 1],
      ["B", 2, -1],
    ]);
  });

  test.each([
    [column([6, 5]), column(["A", "A"]), /^#VALUE! Nobody can be compared/],
    [column([6, "six"]), column(["A", "B"]), /^#VALUE! Air, cell 2: “six” is not a number/],
    [column([6, 5, 7]), column(["A", "B"]), /^#VALUE! Who: the range is 2 × 1 cells/],
  ])("%j by %j is refused: %s", (air, who, sentence) => {
    expect(shown(() => bias(air, who))).toMatch(sentence);
  });
});

describe("FRESH.TESTS.DUE", () => {
  test.each(decided.TESTS_DUE)(
    "$rule in $units: $due ($source)",
    ({ rule, units, placed, due }) => {
      const loads = placed.flatMap((load) =>
        // A load with several tests stands in several rows, its volume in the first.
        Array.from({ length: Math.max(1, load.tests) }, (_, i) => ({ ...load, i })),
      );
      const [, ...lines] = shown(() =>
        testsDueFor(
          column(loads.map(({ day, minute = 0 }) => day + minute / 1440)),
          column(loads.map(({ mix }) => mix)),
          column(loads.map(({ volume, i }) => (i === 0 ? (volume ?? null) : 0))),
          [[rule]],
          column(loads.map(({ tests }) => (tests > 0 ? 6 : null))),
          column(loads.map(({ area, i }) => (i === 0 ? (area ?? null) : null))),
          [[units]],
        ),
      ) as unknown[][];
      expect(lines.map(([day, mix, , ...counts]) => [day, mix, ...counts])).toEqual(due);
    },
  );

  test("where nothing says which load was tested, each row is a test", () => {
    const lines = shown(() => testsDueFor(column([46000, 46000]), [["A"]], column([100, 100])));
    expect((lines as unknown[][])[1]).toEqual([46000, "A", 200, 2, 2, 0]);
  });

  test("a volume that is missing is asked for", () => {
    expect(shown(() => testsDueFor(column([46000]), [["A"]], column([null])))).toMatch(
      /^#VALUE! The rule “ACI 318-08” counts by volume/,
    );
  });
});

describe("FRESH.REGISTER.STATE", () => {
  const register = decided.REGISTER.map(({ id, checked }) => [id, checked]);
  test.each(decided.REGISTER_STATES)("%s on day %s, every %s months: %s %s (%s)", (...given) => {
    const [id, day, months, state, days] = given;
    const words = { current: "current", unknown: "unknown" }[state] ?? "";
    const counted = `${days} ${days === 1 ? "day" : "days"}`;
    const due = days === 0 ? "due today" : `due in ${counted}`;
    const expected = words || (state === "due" ? due : `overdue by ${counted}`);
    expect(shown(() => registerStateOf([[id]], [[day]], register, [[months ?? null]]))).toBe(
      expected,
    );
  });

  test.each([
    [[["M-1"]], /^#VALUE! Register: the register has 1 column/],
    [[[null, null]], /^#VALUE! Register: the register is blank/],
    [[["M-1", "soon"]], /^#VALUE! Register, row 1: “soon” is not a date/],
    [[["M-1", null]], /^#VALUE! Register, row 1: nothing is given/],
  ])("a register of %j is refused: %s", (lines, sentence) => {
    expect(shown(() => registerStateOf([["M-1"]], [[46100]], lines))).toMatch(sentence);
  });
});

describe("FRESH.WATER.CEMENT", () => {
  test.each(decided.WATER_CEMENT)("%s + %s + %s over %s: %s (%s)", (...given) => {
    const [water, moisture, added, cementitious, printed] = given;
    const [ratio, verdict] = row(waterCement, [water, moisture, added, cementitious])!;
    expectAsPrinted(ratio, printed);
    expect(verdict).toBe("");
  });

  test.each(decided.MOST_WATER_CEMENT_ROWS)("of %s is held to %s (%s)", (classes, most) => {
    expect(row(waterCement, [most * 1000, 0, 0, 1000, classes])![1]).toBe("within");
    expect(row(waterCement, [most * 1000 + 1, 0, 0, 1000, classes])![1]).toBe("above");
  });

  checkRefused("WATER.CEMENT", waterCement, [
    [[250, null, null, 611, "F0"], /^#VALUE! Limit: “F0” has no limit of w\/cm in the table/],
    [[2500, null, null, 611], /^#VALUE! A w\/cm of 4.09 cannot be/],
  ]);
});
