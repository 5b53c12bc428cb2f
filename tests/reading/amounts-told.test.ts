import { checkBlock } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";

const HEADERS = ["Load", "1st", "2nd", "Cups", "Air", "Remarks"];
const TESTS = [
  ["V1", 5.25, 5.25, 0, 5.25, null],
  ["V2", 6.75, 6.75, 0, 6.5, null],
];

function statesOf(head: readonly CellValue[][], rows: readonly (readonly CellValue[])[]): string[] {
  const checked = checkBlock([...head, HEADERS, ...rows]);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.results.map(({ state }) => state);
}
const remarked = (remark: string) =>
  TESTS.map((row, i) => (i === 1 ? [...row.slice(0, 5), remark] : row));
const line = (text: string) => [text, null, null, null, null, null];

test.each([
  "Alcohol al 70 %, un litro por prueba salvo nota",
  "2 pints of isopropyl alcohol in every test",
  "Alcool : 0,95 L par essai",
  "Alkohol 1,4 l je Versuch",
])("alcohol told at the head, “%s”, leaves no test valid where no column holds it", (text) => {
  expect(statesOf([line(text), line("")], TESTS)).toEqual(["incomplete", "incomplete"]);
});

test.each(["1,4 L de alcohol", "used 3 pt alcohol", "IPA 48 oz"])(
  "alcohol told in a remark, “%s”, touches its test",
  (remark) => {
    expect(statesOf([], remarked(remark))).toEqual(["valid", "incomplete"]);
  },
);

test.each([
  "70 % isopropyl alcohol",
  "alcohol on hand: 3 gal, 4 pt jugs",
  "no alcohol left in the truck",
])("“%s” tells of no amount that went into a test", (text) => {
  expect(statesOf([line(text), line("")], TESTS)).toEqual(["valid", "valid"]);
});

test.each([
  "cups: 2",
  "cups = 1",
  "one more cup needed",
  "1 full cup of water put in",
  "needed 2 extra cups",
  "2-cup correction",
  "added 1 cup, if memory serves",
  "cinco vasos",
  "2 copas de agua",
  "added in order, 3 pt alcohol",
  "3 pt alcohol from new bottle",
  "five pints of alcohol",
  "half a gallon, 1/2 gal alcohol",
  `${"rolled again. ".repeat(100)}2 cups added`,
])("“%s” beside a test touches it", (remark) => {
  expect(statesOf([], remarked(remark))).toEqual(["valid", "incomplete"]);
});

test.each([
  "0 cups",
  "no cups needed",
  "cups: 0",
  "Form C173-2 cups",
  "2 cups of coffee for all",
  "bring 4 pt jugs of alcohol",
])("“%s” beside a test tells of no amount", (remark) => {
  expect(statesOf([], remarked(remark))).toEqual(["valid", "valid"]);
});

/** The same sheet without a column of cups. */
function statesWithoutCups(text: string, remark: string | null = null): string[] {
  const without = ([name, first, second, , air]: readonly CellValue[]): CellValue[] => [
    ...[name!, first!, second!, air!],
    null,
  ];
  const [v1, v2] = TESTS.map(without) as [CellValue[], CellValue[]];
  const block = [line(text).slice(0, 5), without(HEADERS), v1, [...v2.slice(0, 4), remark]];
  const checked = checkBlock(block);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.results.map(({ state }) => state);
}

test.each([
  "Procedure: add 1 cup of water if level is below scale",
  "Set of meter: bowl, funnel, 2 cups, syringe",
  "1 cup = 1 % air",
  "Form C173-2 cups",
  "maximum 3 cups",
])("“%s” at the head instructs and tells of no test", (text) => {
  expect(statesWithoutCups(text)).toEqual(["valid", "valid"]);
});

test.each(["Two cups added in all tests unless noted", "each test with 1 cup of water"])(
  "“%s” at the head tells of all tests, where no column holds them",
  (text) => {
    expect(statesWithoutCups(text)).toEqual(["incomplete", "incomplete"]);
    expect(statesOf([line(text), line("")], TESTS)).toEqual(["valid", "valid"]);
  },
);

test("a name may tell of cups", () => {
  const named = TESTS.map(([name, ...others], i) => [i === 1 ? "V2 (2 cups)" : name!, ...others]);
  expect(statesOf([], named)).toEqual(["valid", "incomplete"]);
});

test("a blank or a 0 among the cups or the alcohol is none only where no remark tells of some", () => {
  const headers = ["Load", "1st", "2nd", "Cups", "Alcohol (pt)", "Remarks"];
  const rows = [
    ["V1", 5.5, 5.5, null, 2, "2 cups added"],
    ["V2", 5.5, 5.5, 0, null, "3 pt alcohol used"],
    ["V3", 5.5, 5.5, 1, 2, "1 cup, 2 pt alcohol"],
    ["V4", 5.5, 5.5, null, 2, null],
    ["V5", 5.5, 5.5, "0", 2, "1 cup"],
  ];
  const checked = checkBlock([headers, ...rows]);
  if (isIssue(checked)) throw new Error(checked.id);
  expect(checked.results.map(({ state }) => state)).toEqual([
    "incomplete",
    "incomplete",
    "valid",
    "valid",
    "incomplete",
  ]);
});
