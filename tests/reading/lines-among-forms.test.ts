import { checkBlock } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";

const WIDTH = 4;
const row = (...cells: CellValue[]) => Array.from({ length: WIDTH }, (_, at) => cells[at] ?? null);
const form = (name: string) => [
  row("Test", name),
  row("1st reading", 5.5),
  row("2nd reading", 5.5),
  row("Alcohol (pt)", 2),
];
const ofThree = [
  row("Test", "T-1", "T-2", "T-3"),
  row("1st reading", 5.5, 5.5, 5.5),
  row("2nd reading", 5.5, 5.5, 5.5),
  row("Alcohol (pt)", 2, 2, 2),
];

function statesOf(block: CellValue[][]): string {
  const checked = checkBlock(block);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.results.map(({ state }) => state[0]).join("");
}

test.each([
  ["2 cups of water added", "iv"],
  ["bowl leaked at the clamp while rolling", "iv"],
  ["T-2 leaked at the clamp while rolling", "vi"],
  ["T-2 with two cups of water", "vi"],
  ["both tests leaked at the clamp", "ii"],
  ["The test is void if the bowl leaks", "vv"],
  ["Check for leaks and foam over 2 divisions", "vv"],
  ["Add a cup of water if the level is below the scale", "vv"],
  ["poured from the east end, cloudy", "vv"],
])("of two forms the line “%s” between them touches %s", (line, states) => {
  expect(statesOf([...form("T-1"), row(line), row(), ...form("T-2")])).toBe(states);
});

test.each([
  ["All tests with two cups of water", "ii"],
  ["Bowl leaked at the clamp in T-1", "iv"],
])("of two forms the line “%s” above them touches %s", (line, states) => {
  expect(statesOf([row(line), row(), ...form("T-1"), row(), ...form("T-2")])).toBe(states);
});

test.each([
  ["T-2 leaked at the clamp while rolling", "viv"],
  ["leaked at the clamp while rolling", "iii"],
])("of tests in columns the line “%s” touches %s", (line, states) => {
  expect(statesOf([...ofThree, row(line)])).toBe(states);
});
