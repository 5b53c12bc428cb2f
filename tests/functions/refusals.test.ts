import "./custom-functions-runtime";
import { bias } from "../../src/functions/bias";
import { registerStateOf } from "../../src/functions/register";
import { strengthAccept, strengthWithinTest } from "../../src/functions/strength";
import { summary } from "../../src/functions/summary";
import { testsDueFor } from "../../src/functions/tests-due";
import { levelStable } from "../../src/functions/volumetric-air";
import { waterCement } from "../../src/functions/water-cement";

/** The first cell of what a call gives, an error as a cell and its sentence. */
function first(run: () => unknown[][]): string {
  try {
    return told(run()[0]![0]);
  } catch (error) {
    return told(error);
  }
}
const told = (cell: unknown) =>
  cell instanceof CustomFunctions.Error ? `${cell.code} ${cell.message}` : String(cell);

const column = (...cells: unknown[]) => cells.map((cell) => [cell]);
const NA = { code: "#N/A" };
const WHOLE_COLUMN = Array.from({ length: 1_048_576 }, () => [1]);

/** What each argument is told when it holds what it cannot use: the sentence names the argument. */
test.each<[what: string, run: () => unknown[][], sentence: RegExp]>([
  ["an error among those who tested", () => bias(column(6, 5), column("A", NA)), /Who, cell 2/],
  ["an error among mixes", () => bias(column(6, 5), column("A", "B"), column(NA, "M")), /Mix/],
  [
    "a month of an interval that cannot be",
    () => registerStateOf([["M"]], [[46_100]], [["M", 46_000]], [[-3]]),
    /Interval/,
  ],
  [
    "an error for a name in the register",
    () => registerStateOf([["M"]], [[46_100]], [[NA, 46_000]]),
    /Register, row 1/,
  ],
  [
    "a line of the register without a name",
    () => registerStateOf([["M"]], [[46_100]], [[null, 46_000]]),
    /Register, row 1: nothing is given/,
  ],
  [
    "an interval of the register that is no number",
    () => registerStateOf([["M"]], [[46_100]], [["M", 46_000, "yearly"]]),
    /Register, row 1: “yearly” is not a number/,
  ],
  [
    "a whole column as a register",
    () => registerStateOf([["M"]], [[46_100]], WHOLE_COLUMN),
    /rows/,
  ],
  [
    "an error among mixes of a day",
    () => testsDueFor(column(46_100), column(NA), column(8)),
    /Mix/,
  ],
  ["levels without their minutes", () => levelStable([[null, 2]], [[6, 6]]), /Minutes/],
  [
    "an error for exposure classes",
    () => waterCement([[250]], [[0]], [[0]], [[611]], [[NA]]),
    /#N\/A/,
  ],
  ["one cylinder a test", () => strengthWithinTest([[4000], [4100]]), /cylinders/i],
  [
    "units in two cells that differ",
    () => strengthAccept(column(4000, 4100, 4200), [[4000]], column("us", "si")),
    /Units/,
  ],
  [
    "two specified strengths",
    () => strengthAccept(column(4000, 4100, 4200), column(4000, 5000)),
    /Specified/,
  ],
  ["no specified strength", () => strengthAccept(column(4000, 4100, 4200), [[null]]), /Specified/],
  ["a summary by what is not there", () => summary([["Air"]], [[5]], [["Moon"]]), /Moon|reading/],
])("%s: said with its place", (_, run, sentence) => {
  expect(first(run)).toMatch(sentence);
});

test("a group of which no test stands has counts and blanks, and days are written as days", () => {
  const headers = [["Date", "First reading", "Second reading", "Foam", "Alcohol (oz)"]];
  const rows = [
    [46_100, 5, 5, 3, null],
    ["soon", null, 5, null, null],
    [null, 5, 5, null, null],
  ];
  const lines = summary(headers, rows, [["day"]]).slice(1);
  expect(lines.map(([day]) => day)).toEqual(["2026-03-19", "soon", ""]);
  // Foam of 3 % is over what the method lets stand (ASTM C173): the only test of that day is void.
  expect(lines[0]!.slice(1, 10)).toEqual([1, 1, 0, "", "", "", "", 0, 0]);
});
