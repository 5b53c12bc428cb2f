import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";

type Block = readonly (readonly CellValue[])[];

function checked(block: Block) {
  const result = checkBlock(block);
  if (isIssue(result)) throw new Error(result.id);
  return result;
}

const FORM = (name: string): Block => [
  [name, null],
  ["Reading 1", 5.5],
  ["Reading 2", 5.5],
  ["Alcohol (pt)", 2],
];

/** Forms whose title names the test, in the trade's ways of writing, and the name of the test. */
const TITLES: readonly (readonly [title: string, name: string])[] = [
  ["Sample A", "A"],
  ["Sample #12", "12"],
  ["Test No. 7", "7"],
  ["Ticket 88121", "88121"],
  ["Load 4-B", "4-B"],
  ["Muestra M-1", "M-1"],
  ["Probe 3", "3"],
];

test.each(TITLES)("“%s” above a form names its test %s", (title, name) => {
  expect(checked(FORM(title)).results.map(({ sample }) => String(sample))).toEqual([name]);
});

test("of two forms beside one another each has the name in its own title", () => {
  const [one, other] = [FORM("Sample A"), FORM("Sample B")];
  const block = one.map((row, at) => [...row, null, ...other[at]!]);
  expect(checked(block).results.map(({ sample }) => sample)).toEqual(["A", "B"]);
});

test("a label that names the load goes before the title", () => {
  const { results } = checked([...FORM("Test A"), ["Load", 20]]);
  expect(results.map(({ sample }) => String(sample))).toEqual(["20"]);
});

test("a title in words names nothing", () => {
  const { results } = checked(FORM("Sample report"));
  expect(results.map(({ sample }) => sample)).toEqual([""]);
});

test("the title of a section does not rival the label of its result", () => {
  const { reading, results } = checked([
    ["AIR CONTENT (VOLUMETRIC)", null, null, null],
    ["1st reading", "5.5 %", "2nd reading", "5.5 %"],
    ["Alcohol used", "2 pints", "Water cups added", 0],
    ["Air content", "5.50 %", "Spec", "4.5 - 7.5 %"],
    ["Slump", "4 1/2 in", "Unit weight", "116 pcf"],
  ]);
  expect(reading.unread.map(({ header }) => header)).toEqual([]);
  expect(results.map(({ specification }) => specification)).toEqual(["within"]);
});

test("a time of the level that is not known may be the one to settle, and decides", () => {
  const { reading } = checked([
    ["Reading 1", 5.5],
    ["Reading 2", 5.5],
    ["Alcohol (pt)", 2],
    ["Minutes the level took", 7],
  ]);
  expect(reading.unread.map(({ mayBe, decides }) => [mayBe, decides])).toEqual([
    [["settle"], true],
  ]);
});
