import { checkBlock } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";

function testsOf(block: CellValue[][]) {
  const width = Math.max(...block.map((row) => row.length));
  const cells = block.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
  const checked = checkBlock(cells);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.results.map(({ sample, state, air }) => [sample, state, air]);
}
const form = (name: string, label: string, amount: number, unit?: string): CellValue[][] => [
  ["Test no.", name],
  ["First reading", 6.5, "%"],
  ["Second reading", 6.5, "%"],
  [label, amount, ...(unit === undefined ? [] : [unit])],
];

// 3 pt are 48 oz and 1.4 L: 0.3 % are subtracted (ASTM C173, Table 1, from memory), 6.2 to the nearest quarter.
test("each form is read in its own unit of the alcohol", () => {
  const tests = testsOf([
    ...form("V-1", "Alcohol", 3, "pt"),
    [],
    ...form("V-2", "Alcohol", 48, "oz"),
    [],
    ...form("V-3", "Alcohol (L)", 1.4),
  ]);
  expect(tests).toEqual([
    ["V-1", "valid", 6.25],
    ["V-2", "valid", 6.25],
    ["V-3", "valid", 6.25],
  ]);
});

test("an amount without a unit is not read in that of the form above", () => {
  const tests = testsOf([...form("V-1", "Alcohol", 3, "pt"), [], ...form("V-2", "Alcohol", 3)]);
  expect(tests.map(([, state]) => state)).toEqual(["valid", "incomplete"]);
});

test("beside one another each side is read in its own unit and called by its own names", () => {
  const tests = testsOf([
    ["Mix A", null, null, null, null, "Mix B"],
    ["Test", "Alc, pt", "R1", "R2", null, "Test", "Alc, L", "R1", "R2"],
    ["A1", 2, 6.5, 6.5, null, "B1", 1.4, 6.5, 6.5],
    ["A2", 3, 6.5, 6.5, null, "B2", 0.9, 6.5, 6.5],
    ["B2 leaked at the clamp, not valid."],
  ]);
  expect(tests).toEqual([
    ["A1", "valid", 6.5],
    ["B1", "valid", 6.25],
    ["A2", "valid", 6.25],
    ["B2", "incomplete", undefined],
  ]);
});

test("values in words keep their units beside them", () => {
  const tests = testsOf(
    ["V-1", "V-2", "V-3"].flatMap((name) => [
      ...form(name, "Alcohol", 2, "pt"),
      ["Third reading", "not req'd", "%"],
      ["Calibrated cups", "two", "cups"],
      [],
    ]),
  );
  expect(tests).toEqual([
    ["V-1", "valid", 8.5],
    ["V-2", "valid", 8.5],
    ["V-3", "valid", 8.5],
  ]);
});
