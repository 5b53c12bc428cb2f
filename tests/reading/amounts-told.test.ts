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
