import { whatIf } from "../../../src/acceptance/what-if";
import type { CellValue } from "../../../src/measure/cell-value";
import { Problem } from "../../../src/measure/problem";
import {
  complaintAbout,
  inputsOfRow,
  NO_INPUTS,
  testOfInputs,
} from "../../../src/pane/test/test-inputs";
import { turningPointSentence } from "../../../src/pane/test/turning-points-view";
import { verdictSentences } from "../../../src/pane/test/verdict-view";
import { resultOf } from "../../check-values/result-of";
import { checkedTable } from "../../fieldsheet/checked";

const TYPED = { ...NO_INPUTS, reading: "7.75", alcohol: "64 oz", low: "4.5", high: "7.5" };

const checkedOne = (headers: string[], row: CellValue[]) =>
  checkedTable({ headers, rows: [row] }, { low: 4.5, high: 7.5 });

test("a row fills the inputs as somebody would type them", () => {
  const headers = ["First reading", "Second reading", "Cups", "Alcohol (mL)"];
  const result = checkedOne(headers, [6, 6.25, 1, 1400]);
  expect(inputsOfRow(result.results[0]!, result, ".")).toEqual({
    reading: "6.25",
    cups: "1",
    alcohol: "1.4 L",
    low: "4.5",
    high: "7.5",
    check: "",
  });
  expect(inputsOfRow(result.results[0]!, result, ",")).toMatchObject({
    reading: "6,25",
    alcohol: "1,4 L",
  });
});

test("a result outside brings along the check test that was made of it", () => {
  const rows = [
    ["S-1", 8, 8, 16],
    ["S-1C", 7, 7.25, 16],
  ];
  const headers = ["Sample", "First reading", "Second reading", "Alcohol (oz)"];
  const result = checkedTable({ headers, rows }, { low: 4.5, high: 7.5 });
  expect(inputsOfRow(result.results[0]!, result, ".").check).toBe("7.25");
  expect(inputsOfRow(result.results[1]!, result, ".").check).toBe("");
});

test("what a row fills in gives the row's own result again, with either decimal mark", () => {
  const result = checkedOne(["Final reading", "Alcohol (pt)"], [6.25, 3.5]);
  const [row] = result.results;
  for (const decimal of [".", ","] as const) {
    const { test } = testOfInputs(inputsOfRow(row!, result, decimal), decimal)!;
    expect(resultOf(whatIf(test))).toMatchObject({ air: row!.air, verdict: row!.specification });
  }
});

test("a row of a meter with a longer scale gives its own result again", () => {
  const table = { headers: ["Final reading", "Alcohol (pt)"], rows: [[9.5, 1]] };
  const result = checkedTable(table, { scaleEnd: 10 });
  const [row] = result.results;
  const inputs = inputsOfRow(row!, result, ".");
  const { test } = testOfInputs(inputs, ".", row!.scaleEnd)!;
  expect(resultOf(whatIf(test)).air).toBe(9.5);
  expect(whatIf(testOfInputs(inputs, ".")!.test)).toMatchObject({ id: "reading-beyond-scale" });
});

test("without a reading there is no test", () => {
  expect(testOfInputs({ ...TYPED, reading: " " }, ".")).toBeUndefined();
});

test.each([
  [{ reading: "high" }, "not-a-number", "Final reading, %"],
  [{ cups: "one" }, "not-a-number", "Calibrated cups"],
  [{ alcohol: "48" }, "alcohol-has-no-unit", "Alcohol (such as 48 oz)"],
  [{ check: "7,250" }, "comma-is-unclear", "Check test, %"],
])("%j is said with its label", (typed, id, where) => {
  expect(problemOf({ ...TYPED, ...typed })).toMatchObject({ id, place: where });
});

test("limits that are crossed are said", () => {
  expect(problemOf({ ...TYPED, low: "8" })).toMatchObject({ id: "limits-crossed" });
});

// Derived: 7.75 − 0.60 = 7.15 → 7.25; 0.25 below 7.5. JCGM 106: s = 0.28 gives 0.814 (check value).
test("the sentences give margin, chance and what comes next", () => {
  const { test } = testOfInputs(TYPED, ".")!;
  const [margin, chance, decision] = verdictSentences(
    resultOf(whatIf(test, { deviation: 0.28 })),
    ".",
  );
  expect(margin).toBe("It lies 0.25 % inside the nearer limit.");
  expect(chance).toMatch(/is 81 %, with the deviation of 0.28 % that you gave/);
  expect(decision).toMatch(/accept/);
});

test("on the limit it leads with that, and tells what the chance is (8 − 0.60 = 7.40 → 7.50)", () => {
  const read = testOfInputs({ ...TYPED, reading: "8" }, ".")!;
  const [margin] = verdictSentences(resultOf(whatIf(read.test)), ".");
  expect(margin).toMatch(/^Within, on the limit.*as likely beyond the limit as inside it/);
});

test("a published deviation is called what it is: from memory and to be verified", () => {
  const { test } = testOfInputs(TYPED, ".")!;
  expect(verdictSentences(resultOf(whatIf(test)), ".")[1]).toMatch(
    /C173.*from memory, to be verified/,
  );
});

test.each([
  ["8.5", "", /check test at once/],
  ["8.5", "8", /reject/],
  ["8.5", "7", /check test is within.*accept/],
  ["8", "", /nothing more: accept/],
])("reading %s with a check test of “%s” asks for the next step", (reading, check, asked) => {
  const read = testOfInputs({ ...TYPED, reading, check }, ".")!;
  expect(verdictSentences(resultOf(whatIf(read.test, { check: read.check })), ".")[2]).toMatch(
    asked,
  );
});

test.each([
  ["reading", "about 6", "“about 6” is not a number"],
  ["cups", "1,500", "1,500"],
  ["alcohol", "48", "48 has no unit"],
  ["reading", "5 1/4", ""],
  ["alcohol", "1.5 pt", ""],
] as const)("a wrong input says so itself: %s “%s”", (input, typed, said) => {
  const complaint = complaintAbout(input, typed, ".");
  if (said) expect(complaint).toContain(said);
  else expect(complaint).toBe("");
});

test("a decimal comma is read where the workbook writes one", () => {
  expect(complaintAbout("reading", "5,25", ",")).toBe("");
  expect(testOfInputs({ ...TYPED, reading: "5,25" }, ",")!.test.reading).toBe(5.25);
});

test("how much it would take is said with both values (derived: 8.25 − 0.60 = 7.65 → 7.75)", () => {
  const { turningPoints } = resultOf(whatIf(testOfInputs(TYPED, ".")!.test));
  const up = turningPoints.find(({ input, change }) => input === "reading" && change > 0)!;
  expect(turningPointSentence(up, ".")).toBe(
    "Reading +0.50 % (8.25 instead of 7.75): 7.75 %, above.",
  );
});

function problemOf(typed: Parameters<typeof testOfInputs>[0]): Problem {
  try {
    testOfInputs(typed, ".");
  } catch (problem) {
    if (problem instanceof Problem) return problem;
  }
  throw new Error("no problem was found");
}
