import type { CellValue } from "../../src/measure/cell-value";
import { issue } from "../../src/measure/issue";
import { Problem } from "../../src/measure/problem";
import { recogniseColumns } from "../../src/reading/columns";
import { findTable, type SheetLayout } from "../../src/reading/layout";

const found = (block: CellValue[][]): SheetLayout => Problem.unless(findTable(block));

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
  const { headerRow: row, table } = found(block);
  expect(row).toBe(headerRow);
  expect(table.headers).toEqual(block[headerRow]);
  expect(table.rows).toEqual(block.slice(headerRow + 1));
});

describe("a header in two rows", () => {
  const fieldsUnder = (upper: CellValue[], lower: CellValue[], test: CellValue[]) => {
    const title = titled("Air tests, north yard");
    const { table, headerRow } = found([title, upper, lower, test]);
    expect([headerRow, table.rows]).toEqual([2, [test]]);
    return Object.keys(recogniseColumns(table.headers)).sort();
  };

  // Layouts as they are found on paper forms (common practice).
  test.each([
    [
      "readings side by side under one heading",
      ["Sample", "Meter readings", null, null, "Alcohol", "Reported"],
      [null, "First", "Second", "Third", "oz", "air %"],
    ],
    [
      "every column in two parts",
      ["Sample", "Reading", "", "", "IPA", "Result"],
      ["No.", "1st (%)", "2nd (%)", "3rd (%)", "(fl oz)", "%"],
    ],
    [
      "only the readings have a heading above",
      [null, "Readings", null, null, null, null],
      ["Sample", "First", "Second", "Third", "Alcohol (oz)", "Air"],
    ],
  ])("%s", (_, upper, lower) => {
    const fields = ["air", "alcohol", "first", "sample", "second", "third"];
    expect(fieldsUnder(upper, lower, ["S-01", 5.5, 5.75, null, 16, 5.75])).toEqual(fields);
  });

  test("a row of texts that belongs to the tests is not taken for a second one", () => {
    const test = ["S-01", "5.5", "5.75", "16 oz", "second reading late"];
    expect(found([HEADER, test]).headerRow).toBe(0);
  });
});

test("blank rows are kept, so that positions stay those of the sheet", () => {
  const { table } = found([HEADER, TEST, BLANK, TEST, BLANK]);
  expect(table.rows).toEqual([TEST, BLANK, TEST, BLANK]);
});

test("a table without readings is still found, for the check to say what is missing", () => {
  const header = ["Load", "Date", "Mix"];
  expect(found([["Deliveries", null, null], header, ["L1", 46172, "LW-4"]]).headerRow).toBe(1);
});

test.each([
  ["nothing but blanks", [BLANK, BLANK]],
  ["no rows at all", []],
  ["tests without their header", [TEST, ["S-02", 6, 6, 16, "third reading"]]],
  ["a title alone", [titled("Sample")]],
  ["texts that head nothing we know", [["Colour", "Weather", "Crew", "Gate", "Ramp"], TEST]],
])("%s has no header row", (_, block) => {
  expect(findTable(block)).toEqual(issue("no-header-row"));
});

test("headers that are broken off go on in the row below, blank columns between or not", () => {
  const layout = found([
    ["Marl Gate interchange", null, null, null, null, null, null],
    ["Date", null, "Load", "First", "Second", "Alcohol", "Air"],
    [null, null, "ID", "reading", "reading", "(oz)", "content"],
    ["6/13/2026", null, "MG-102", 6.5, 6.5, 32, 6.5],
  ]);
  expect(layout.headerRow).toBe(2);
  expect(layout.table.headers).toEqual([
    ...["Date", "", "Load ID", "First reading", "Second reading", "Alcohol (oz)", "Air content"],
  ]);
  expect(layout.table.rows).toHaveLength(1);
});

test.each([
  ["a test in words", ["A", null, null, "void", "void", null, null]],
  ["a row of units", [null, null, null, "%", "%", "oz", "%"]],
])("%s below the headers is none of them", (_, below) => {
  const layout = found([
    ["Load", "Mix", "Truck", "First reading", "Second reading", "Alcohol", "Air"],
    below,
    ["L-1", "M", 7, 6.5, 6.5, 32, 6.5],
  ]);
  expect(layout.headerRow).toBe(0);
});
