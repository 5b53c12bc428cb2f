import { findTable } from "../../src/fieldsheet/layout";
import { Problem } from "../../src/measure/problem";

const HEADER = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Remarks"];
const TEST = ["S-01", 5.5, 5.75, 16, null];
const BLANK = [null, null, null, null, null];
const titled = (text: string) => [text, null, null, null, null];

test.each([
  ["the header is the first row", [HEADER, TEST], 0],
  ["a title stands above it", [titled("Air tests, north yard"), BLANK, HEADER, TEST], 2],
  ["a title names a reading", [titled("First reading of every load"), HEADER, TEST], 1],
  ["a title is a word that heads a column", [titled("Tests"), titled("Date"), HEADER, TEST], 2],
  ["facts of the day stand above it", [["Date", 46172, "Mix", "LW-4", null], HEADER, TEST], 1],
  ["a remark below says “second reading”", [HEADER, TEST, ["S-02", 5, 5.5, 8, "final reading"]], 0],
  ["the header stands twice, as on paper", [HEADER, TEST, HEADER, TEST], 0],
  ["one column alone is given", [["Final reading"], [5.5], [6]], 0],
])("%s", (_, block, headerRow) => {
  const found = findTable(block);
  expect(found.headerRow).toBe(headerRow);
  expect(found.table.headers).toEqual(block[headerRow]);
  expect(found.table.rows).toEqual(block.slice(headerRow + 1));
});

test("blank rows are kept, so that positions stay those of the sheet", () => {
  const { table } = findTable([HEADER, TEST, BLANK, TEST, BLANK]);
  expect(table.rows).toEqual([TEST, BLANK, TEST, BLANK]);
});

test("a table without readings is still found, for the check to say what is missing", () => {
  const header = ["Load", "Date", "Mix"];
  expect(findTable([["Deliveries", null, null], header, ["L1", 46172, "LW-4"]]).headerRow).toBe(1);
});

test.each([
  ["nothing but blanks", [BLANK, BLANK]],
  ["no rows at all", []],
  ["tests without their header", [TEST, ["S-02", 6, 6, 16, "third reading"]]],
  ["a title alone", [titled("Sample")]],
  ["texts that head nothing we know", [["Colour", "Weather", "Crew", "Gate", "Ramp"], TEST]],
])("%s has no header row", (_, block) => {
  expect(() => findTable(block)).toThrow(new Problem("no-header-row"));
});
