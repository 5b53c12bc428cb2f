import { shown } from "./custom-functions-runtime";
import {
  air,
  alcoholCorrectionFor,
  levelStable,
  readingFinal,
  readingNext,
} from "../../src/functions/volumetric-air";
import {
  BETWEEN_ROWS,
  CORRECTION_ROWS,
  STUDY_GUIDE,
  WORKED_TESTS,
} from "../check-values/volumetric-air";

const one = (value: unknown) => [[value]];
const column = (...values: unknown[]) => values.map((value) => [value]);

test.each(WORKED_TESTS)("FRESH.READING.FINAL and FRESH.AIR, $name ($source)", (worked) => {
  const [first, second, third] = worked.readings;
  const final = () => readingFinal(one(first), one(second), one(third ?? null));
  if (typeof worked.air === "string") {
    expect(shown(final)).toMatch(/^#N\/A /);
    expect(shown(() => readingNext(one(first), one(second), one(third ?? null)))).toBe(worked.air);
    return;
  }
  const given = [one(worked.cups ?? null), one(worked.pints ?? 0), one("pt")] as const;
  expect(shown(() => air(final(), ...given))).toBe(worked.air);
  expect(shown(() => air(final(), ...given, one(0)))).toBe(worked.unrounded);
});

test.each(CORRECTION_ROWS)(
  "FRESH.ALCOHOL.CORRECTION of %s pt, %s oz, %s L (%s, %s)",
  (pt, oz, L, subtract) => {
    expect(shown(() => alcoholCorrectionFor(column(pt, oz), column("pt", "oz")))).toEqual(
      column(subtract, subtract),
    );
    expect(shown(() => alcoholCorrectionFor(one(`${oz} fl oz`)))).toBe(subtract);
    expect(shown(() => alcoholCorrectionFor(column(`${L} L`, L * 1000), one("mL")))).toEqual(
      column(subtract, subtract),
    );
  },
);

test.each(BETWEEN_ROWS)("FRESH.ALCOHOL.CORRECTION(%s, %s) is %s (%s)", (amount, unit, subtract) => {
  expect(shown(() => alcoholCorrectionFor(one(amount), one(unit)))).toBe(subtract);
});

describe("FRESH.AIR says what is wrong", () => {
  test.each([
    [["abc"], /^#VALUE! Reading: “abc” is not a number/],
    [[-1], /^#VALUE! Reading: a meter reading of -1 % cannot be/],
    [[9.25], /^#VALUE! .* beyond the 9 %/],
    [[6, 25], /^#VALUE! Cups: with 25 .* 31 %.* 30 %/],
    [[0.059], /^#VALUE! .*percentage format.* 5.9/],
    [[5, 1.5], /^#VALUE! Cups: 1.5 is not a whole number of calibrated cups/],
    [[5, 0, 30], /^#VALUE! Alcohol: 30 has no unit.*"pt", "oz", "L" or "mL"/],
    [[5, 0, 30, "cup"], /^#VALUE! Alcohol: “cup” is not a unit of alcohol/],
    [[5, 0, 81, "oz"], /^#VALUE! Alcohol: the correction table ends at 80 oz/],
    [[0.25, 0, 5, "pt"], /^#VALUE! .*below zero/],
    [[5, 0, 0, null, -0.25], /^#VALUE! Step: -0.25 is not a step/],
    [[true], /^#VALUE! Reading: “true” is not a number/],
    [["5,250"], /^#VALUE! Reading: “5,250” can be read in two ways/],
    [[{ code: "#DIV/0!" }], /^#VALUE! Reading: the cell holds the error #DIV\/0!/],
    [[null, 1], /^#VALUE! Reading: nothing is given/],
  ])("for %j", (given, sentence) => {
    const [reading, cups, alcohol, unit, step] = given as unknown[];
    expect(shown(() => air(one(reading), one(cups), one(alcohol), one(unit), one(step)))).toMatch(
      sentence,
    );
  });
});

test("a blank amount of alcohol is missing where one is meant, and left out where none is", () => {
  expect(shown(() => air(one(6), one(0), one(null), one("oz")))).toMatch(
    /^#VALUE! Alcohol: the cell is blank/,
  );
  expect(shown(() => air(column(6, 6), one(0), column("48 oz", null)))).toEqual(
    column(5.75, "#VALUE!"),
  );
  expect(shown(() => air(one(6), one(0), one(null)))).toBe(6);
});

test("a blank is not a zero: a blank row gives a blank, and no alcohol needs no unit", () => {
  expect(shown(() => air(one(null), one(""), one(null), one("oz")))).toBe("");
  expect(shown(() => air(one("n/a")))).toBe("");
  expect(shown(() => air(one(5), one(null), one(0)))).toBe(5);
  expect(shown(() => air(one(0)))).toBe(0);
});

test("a column in gives a column out, and one bad row never hides the others", () => {
  const readings = column(6, "x", 7.75, null);
  expect(shown(() => air(readings, one(0), column(48, 48, 64, null), one("oz")))).toEqual(
    column(5.75, "#VALUE!", 7.25, ""),
  );
});

test("a single row and a single column broadcast over each other", () => {
  expect(shown(() => air(column(5, 6), [[0, 1, 2]]))).toEqual([
    [5, 6, 7],
    [6, 7, 8],
  ]);
});

test("ranges of unequal size are refused as a whole, with the argument named", () => {
  expect(shown(() => air(column(5, 6, 7), column(0, 1)))).toMatch(
    /^#VALUE! Cups: the range is 2 × 1 cells/,
  );
});

test("a whole column is refused", () => {
  const whole = Array.from({ length: 1_048_576 }, () => [null]);
  expect(shown(() => air(whole))).toMatch(/^#VALUE! Reading: a whole column is given/);
});

test("numbers are read as people write them", () => {
  const written = column("5.25", "5.25 %", "5 1/4", "5¼");
  expect(shown(() => air(written))).toEqual(column(5.25, 5.25, 5.25, 5.25));
  expect(shown(() => air(one(6), one(0), one("1 1/2 pt")))).toBe(6);
  expect(shown(() => air(one(6), one(0), one("1.4 L"), one(null), one(0)))).toBe(5.7);
});

const NEXT: [number, number | null, number | null, string, string][] = [
  [
    5.5,
    null,
    null,
    "second reading",
    "a meter maker's manual (2019): a second reading confirms the first",
  ],
  [5.5, 6.25, null, "third reading", STUDY_GUIDE],
  [5.5, 6.25, 6.25, "final", STUDY_GUIDE],
  [5, 5.5, 6, "void", "common practice"],
];

test.each(NEXT)("FRESH.READING.NEXT(%s, %s, %s) is %s (%s)", (first, second, third, next) => {
  expect(shown(() => readingNext(one(first), one(second), one(third)))).toBe(next);
});

test.each([
  [[5.5, null], /^#N\/A A second reading is needed/],
  [
    [5.5, 6.25],
    /^#N\/A A third reading is needed: the second, 6.25 %, differs from the first, 5.5 %/,
  ],
  [[5, 5.5, 6], /^#N\/A The test is void/],
  [[5, 9.5], /^#VALUE! .*beyond/],
])("FRESH.READING.FINAL of %j has no result, and says why", (readings, sentence) => {
  const [first, second, third = null] = readings as (number | null)[];
  expect(shown(() => readingFinal(one(first), one(second), one(third)))).toMatch(sentence);
});

describe("FRESH.LEVEL.STABLE", () => {
  const minutes = column(1, 2, 3, 4, 5);
  test.each([
    [column(7, 6, 5.5, 5.5, 5.25), 5, "derived: from minute 3 on within 0.25"],
    [
      column(6, null, 6, null, null),
      3,
      "a level that was not recorded is passed over (our own rule)",
    ],
  ])("%j settles at minute %s (%s)", (levels, minute) => {
    expect(shown(() => levelStable(minutes, levels))).toBe(minute);
  });
  test.each([
    [column(7, 6, 5, 4, 3), /^#N\/A The level has not settled by minute 5/],
    [column(7, "x", 5, 4, 3), /^#VALUE! Levels: “x” is not a number/],
    [column(7, 6), /^#VALUE! Levels: the range is 2 × 1 cells/],
    [column(null, null, null, null, null), ""],
  ])("%j gives %s", (levels, expected) => {
    const cell = shown(() => levelStable(minutes, levels));
    if (typeof expected === "string") expect(cell).toBe(expected);
    else expect(cell).toMatch(expected);
  });
  test("minute 6 ends the waiting", () => {
    expect(shown(() => levelStable(column(0, 3, 6), column(9, 7, 5)))).toMatch(
      /^#N\/A The level did not settle/,
    );
  });
  test("a row of minutes above a table gives one minute for each test", () => {
    const table = [
      [6, 6, 6, 6],
      [7, 6, 6, 6],
      [9, 8, 7, 6],
    ];
    expect(shown(() => levelStable([[0, 1, 2, 3]], table))).toEqual(column(2, 3, "#N/A"));
  });
});
