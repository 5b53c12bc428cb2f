import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CheckResult } from "../../src/fieldsheet/check-result";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";
import { namesOnce, rowsOfWords } from "../../src/reading/rows-of-words";

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

/** What becomes of five tests with a line below them. */
function statesWith(line: CellValue[], names = ["V1", "V2", "V3", "V4", "V5"]): string {
  const checked = check(...names.map((name) => row(name, 5.5)), line);
  return statesOf(checked)
    .slice(0, names.length)
    .map((state) => state[0])
    .join("");
}

test.each([
  ["V5 void, air = 5.25 not to be reported", "vvvvi"],
  ["V2: foam = 4 divisions, leaked at the clamp", "vivvv"],
  ["Key to clamp lost, bowl leaked during V2", "vivvv"],
  ["V1-V3 leaked at the clamp", "iiivv"],
  ["V1 to V3 leaked at the clamp", "iiivv"],
  ["V1/V2 void, wrong bowl", "iivvv"],
  ["V-2, 4 and 5 void, wrong bowl", "vivii"],
  ["#1 bowl leaked at the clamp", "ivvvv"],
  ["Loads 3 and 4 void, see foreman", "vviiv"],
  ["Tests 2 thru 4 void, see foreman", "viiiv"],
  ["leaked 1 time at the clamp", "vvvvi"],
  ["a leak at the clamp, see remarks", "vvvvi"],
  ["foam over 2 divisions, 10:20", "vvvvi"],
  ["the last two leaked at the clamp", "iiiii"],
  ["ticket 4471 leaked at the clamp", "iiiii"],
  ["VOID", "vvvvi"],
  ["V3 void", "vvivv"],
  ["bowl leaked", "vvvvi"],
  ["V3 = void", "vvivv"],
  ["void?", "vvvvi"],
  ["V3 void?", "vvivv"],
  ["V2 rejected, sent back at once", "vivvv"],
  ["V2: Deckel nicht dicht", "vivvv"],
  ["V2 bowl was not tight", "vivvv"],
  ["V2 took 8 minutes to settle", "vivvv"],
  ["V2 no good", "vivvv"],
  ["la V2 no vale", "vivvv"],
  ["All valid except V2", "vivvv"],
  ["V2 needed 3 cups", "vivvv"],
  ["V2 not void", "vvvvv"],
  ["V2 waited 8 minutes for the truck", "vvvvv"],
  ["repeat the test if it is void", "vvvvv"],
])("of five tests V1 to V5 “%s” touches those that it names, else the last: %s", (text, states) => {
  expect(statesWith(alone(text))).toBe(states);
  expect(statesWith([null, null, null, null, text])).toBe(states);
  if (text.includes(" ")) expect(statesWith(["Note:", null, null, null, text])).toBe(states);
});

test.each([
  ["Load 2 bowl leaked", "vivvv"],
  ["Loads 2 and 3: bowl leaked", "viivv"],
  ["Loads 2-4 bowl leaked", "viiiv"],
  ["2 and 3 leaked at the clamp", "viivv"],
])("names of two words are names: “%s”", (text, states) => {
  const names = ["Load 1", "Load 2", "Load 3", "Load 4", "Load 5"];
  expect(statesWith(alone(text), names)).toBe(states);
});

test("tests that are called by a letter are named behind a word for a test only", () => {
  const names = ["A", "B", "C"];
  expect(statesWith(alone("a leak at the clamp of the bowl"), names)).toBe("iii");
  expect(statesWith(alone("sample B leaked at the clamp"), names)).toBe("viv");
});

test("a test that is called “Truck 4” may leak, a truck may not", () => {
  const names = ["Truck 3", "Truck 4", "Truck 5"];
  expect(statesWith(alone("Truck 4 leaked while rolling, void"), names)).toBe("viv");
  expect(statesWith(alone("truck leaking oil all over the place"), names)).toBe("vvv");
});

test("a fault right below the header, before the only test, is no part of the header", () => {
  const checked = check(["Note:", "bowl leaked", null, null, null], row("V1", 5.5));
  expect(statesOf(checked)).toEqual(["", "incomplete"]);
});

test("however many rows tell of a fault, the names of the tests are looked at once", () => {
  const rows = [["T1"], ["T2"], ["T1 leaked at the clamp"], ["T2 leaked at the clamp"]];
  let looked = 0;
  const named = namesOnce(function* () {
    looked++;
    yield [0, "T1"];
    yield [1, "T2"];
  });
  const said = rowsOfWords(rows, (row) => row < 2, named, 0);
  expect(said.map(({ touches }) => [touches(0), touches(1)])).toEqual([
    [true, false],
    [false, true],
  ]);
  expect(looked).toBe(1);
});

test.each([
  "The test is void if the bowl leaks at the clamp",
  "Check the bowl for leaks, foam over 2 divisions voids the test if it stays",
  "1. Repeat when foam is over 2 divisions",
  "Leaks must be reported at once to the laboratory",
  "Any test with foam over 2 divisions: do it again",
  "Tests V1 to V3 of last week were void and are not in this sheet",
  "Cylinders of V2 rejected, mould leaked",
  "Temperatura y cilindros de V2 rechazados; el ensayo de aire se mantiene",
  "Revise que no haya fugas en la tapa",
  "Bei mehr als 2 Teilstrichen Schaum wiederholen",
])("“%s” instructs and is of no test", (text) => {
  expect(statesWith(alone(text))).toBe("vvvvv");
  expect(statesBelow(text)).toBe("vvv");
});

/** What becomes of three tests with a line above their header. */
function statesBelow(line: string): string {
  const checked = checkBlock([
    alone(line),
    alone(""),
    HEADERS,
    ...["V1", "V2", "V3"].map((name) => row(name, 5.5)),
  ]);
  if (isIssue(checked)) throw new Error(checked.id);
  return statesOf(checked)
    .map((state) => state[0])
    .join("");
}

test.each([
  ["V2 leaked at the clamp, the others fine", "viv"],
  ["Note: tests 2 and 3 void, wrong bowl", "vii"],
  ["bowl leaked at the clamp", "iii"],
  ["Meter 14, no leaks", "vvv"],
])("what a line above the table tells of tests touches them: “%s”", (line, states) => {
  expect(statesBelow(line)).toBe(states);
});
