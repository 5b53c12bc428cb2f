import type { CellValue } from "../../src/measure/cell-value";
import { findTestsIn, readTestsInSteps } from "../../src/reading/read-sheet";
import { inOneGo } from "../../src/reading/steps";
import * as headers from "../../src/reading/units-in-header";
import { isIssue } from "../../src/measure/issue";

jest.mock("../../src/reading/units-in-header", () => {
  const actual = jest.requireActual<typeof headers>("../../src/reading/units-in-header");
  return { ...actual, readHeader: jest.fn(actual.readHeader) };
});

const HEADERS = ["Sample", "Date", "First reading", "Second reading", "Alcohol (oz)", "Remarks"];

/** How many texts are read as headers while a sheet of so many tests is read. */
function headersRead(rows: number, cell: (value: number) => CellValue): number {
  jest.mocked(headers.readHeader).mockClear();
  const tests = Array.from({ length: rows }, (_, i) => [
    ...[`S-${rows}-${i}`, 46_000 + (i % 300)],
    ...[cell(5 + (i % 8) / 4), cell(5 + (i % 8) / 4), cell(16)],
    `poured at bay ${i} of ${rows}`,
  ]);
  const found = findTestsIn([HEADERS, ...tests]);
  if (isIssue(found)) throw new Error(found.id);
  expect(inOneGo(readTestsInSteps(found)).records).toHaveLength(rows);
  return jest.mocked(headers.readHeader).mock.calls.length;
}

// Reading a text as a header takes as long as reading a hundred tests.
test.each<[what: string, cell: (value: number) => CellValue]>([
  ["numbers", (value) => value],
  ["texts", (value) => String(value)],
])("the words of tests in %s are not read one by one as headers are", (_, cell) => {
  expect(headersRead(4000, cell)).toBeLessThan(headersRead(1000, cell) + 100);
});
