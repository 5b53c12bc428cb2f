import { readCsv } from "../../../src/files/csv/read-csv";
import { csvOf } from "../../../src/files/csv/write-csv";
import type { CellValue } from "../../../src/measure/cell-value";

const bytes = (text: string) => new TextEncoder().encode(text);

// RFC 4180 says how cells are set off and quoted; that programs run what begins with = + - @ is OWASP's "CSV injection".
test.each<[value: CellValue, written: string]>([
  [6.25, "6.25"],
  [-0.25, "-0.25"],
  ["L-1", "L-1"],
  ["", ""],
  [null, ""],
  [true, "true"],
  ["one, two", '"one, two"'],
  ['a "good" test', '"a ""good"" test"'],
  ["two\nlines", '"two\nlines"'],
  [" kept", '" kept"'],
  ["=1+1", "'=1+1"],
  ["+1", "'+1"],
  ["-1", "'-1"],
  ["@SUM(A1)", "'@SUM(A1)"],
  ["\t=1", "'\t=1"],
  ["  =1+1", "'  =1+1"],
  ['=HYPERLINK("x","y")', `"'=HYPERLINK(""x"",""y"")"`],
])("%j is written %j", (value, written) => {
  expect(csvOf([["x", value]])).toBe(`\ufeffx,${written}\r\n`);
});

test("what is written is read again as it was", () => {
  const rows = [
    ["Sample", "Air, %"],
    ['L "1"', 6.25],
    ["é, ñ\r\nü", 5],
  ];
  expect(readCsv(bytes(csvOf(rows)), 10).rows).toEqual(rows);
});
