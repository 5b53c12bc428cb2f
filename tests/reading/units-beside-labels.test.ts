import { checkBlock } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";

function testsOf(block: CellValue[][]) {
  const checked = checkBlock(block);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.results.map(({ sample, state, air }) => [sample, state, air]);
}

test("tests in columns with their units in a column of their own are read with them", () => {
  const block = [
    ["Pour 7", null, null, null, null],
    [null, null, "7-1", "7-2", "7-3"],
    ["Slump", "in", 4, 4.25, 3.75],
    ["Reading after 1st roll", "%", 5, 5.5, 6.5],
    ["Reading after 2nd roll", "%", 5, 5.25, 6.25],
    ["Settling time", "min", 2, 2, 7],
    ["Alcohol", "pt", 1, 1, 1],
    ["Calibrated cups", "no.", 0, 0, 0],
    ["Comment", null, null, null, "would not settle, no result"],
  ];
  expect(testsOf(block)).toEqual([
    ["7-1", "valid", 5],
    ["7-2", "valid", 5.25],
    ["7-3", "void", undefined],
  ]);
});

test("a name for the labels and one for the units stand over their columns", () => {
  const block = [
    ["Dato", "Unidad", "D3-1", "D3-2"],
    ["Lectura inicial", "%", 6.5, 6.75],
    ["Lectura de comprobación", "%", 6.5, 6.5],
    ["Espuma", "div", 1, 1],
    ["Alcohol", "pintas", 2, 2],
  ];
  expect(testsOf(block)).toEqual([
    ["D3-1", "valid", 6.5],
    ["D3-2", "valid", 6.5],
  ]);
});

test("the unit of a value that is not there is no value", () => {
  const block = [
    ["Muestra", "M-058", null],
    ["Primera lectura", "5,75", "%"],
    ["Segunda lectura", "5,50", "%"],
    ["Tercera lectura", "---", "%"],
    ["Alcohol isopropílico", "0,95", "L"],
  ];
  expect(testsOf(block)).toEqual([["M-058", "valid", 5.5]]);
});

test("a card with its labels above its values takes no label for a value", () => {
  const block = [
    ["VOLUMETRIC AIR", null, null, null],
    ["Sample", "Date", "Time", "Truck"],
    ["S-31", 20260603, "0915", "T-8"],
    [null, null, null, null],
    ["Initial rdg, %", "2nd rdg, %", "Alcohol, oz", "Cups water"],
    [6.25, 6.25, 48, 0],
    ["Foam, div.", "Settling, min", "Spec. min", "Spec. max"],
    [1, 3.5, 5, 8],
  ];
  expect(testsOf(block)).toEqual([["S-31", "valid", 6]]);
});

test.each([
  ["Leak", "yes", "void", undefined],
  ["Packed material left", "yes", "void", undefined],
  ["Calibrated cups", "two", "valid", 7.5],
  ["Calibrated cups", "see note", "incomplete", undefined],
  ["Foam, divisions", "over two", "void", undefined],
])("an answer among the units is no unit: %s, %s", (label, answer, state, air) => {
  const block = [
    ["Sample", null, "R-4"],
    ["Slump", "in", 4],
    ["First reading", "%", 5.5],
    ["Second reading", "%", 5.5],
    ["Alcohol", "pt", 2],
    [label, answer, null],
  ];
  expect(testsOf(block)).toEqual([["R-4", state, air]]);
});
