import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CheckResult } from "../../src/fieldsheet/check-result";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";

const HEADERS = ["Load", "1st", "2nd", "Alcohol (pt)", "Air"];
const row = (name: string, air: number) => [name, air, air, 2, air];
const alone = (text: string) => [text, null, null, null, null];

function check(...rows: CellValue[][]): CheckResult {
  const checked = checkBlock([HEADERS, ...rows]);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked;
}
const statesOf = ({ results }: CheckResult) => results.map(({ state }) => state);
const rulesOf = ({ findings }: CheckResult) => findings.map(({ rule }) => rule);

test("a sentence between the tests is no test, and is said", () => {
  const checked = check(
    row("L-1", 5.5),
    alone("rain 10:20 to 10:55, paver stopped"),
    row("L-2", 6),
  );
  expect(statesOf(checked)).toEqual(["valid", "", "valid"]);
  expect(rulesOf(checked)).toContain("row-of-words");
});

test("a name with nothing beside it is a test that lacks its readings, however many words it has", () => {
  const named = [row("North wall lift 1", 5.5), row("North wall lift 2", 6)];
  const checked = check(...named, alone("North wall lift 3"));
  expect(statesOf(checked)).toEqual(["valid", "valid", "incomplete"]);
});

test.each([
  [
    "the test that it names",
    "F4 leaked at the clamp, see remarks",
    ["valid", "incomplete", "valid", ""],
  ],
  ["the test above it", "leaked at the clamp while rolling", ["valid", "valid", "incomplete", ""]],
])("words that tell of a fault touch %s", (_, text, states) => {
  const checked = check(row("F3", 5.5), row("F4", 6), row("F5", 6), alone(text));
  expect(statesOf(checked)).toEqual(states);
  expect(rulesOf(checked)).toContain("words-may-void");
});

test("words that may be of any test touch them all", () => {
  const checked = check(
    row("F3", 5.5),
    row("F4", 6),
    alone(""),
    alone("* the bowl leaked at the clamp"),
  );
  expect(statesOf(checked)).toEqual(["incomplete", "incomplete", "", ""]);
});

test.each([
  "V = void test, repeated at once",
  "Key: L leak, F foam over 2 divisions",
  "Tests with more than 2 divisions of foam are void by the method",
  "Repeat the test at once if it is void",
])("“%s” explains and is of no test", (text) => {
  expect(statesOf(check(row("F3", 5.5), row("F4", 6), alone(text)))).toEqual([
    "valid",
    "valid",
    "",
  ]);
});
