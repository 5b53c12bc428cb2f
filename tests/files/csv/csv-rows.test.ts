import fc from "fast-check";
import { csvCell } from "../../../src/files/csv/csv-cell";
import { CsvRows } from "../../../src/files/csv/csv-rows";
import { delimiterOf } from "../../../src/files/csv/delimiter";
import { readCsv } from "../../../src/files/csv/read-csv";
import { encodingOf } from "../../../src/files/csv/text-of-bytes";

function rowsOf(text: string, delimiter = ",", piece = text.length || 1): string[][] {
  const rows = new CsvRows(delimiter, 1000, (line) => {
    throw new Error(`line ${line} is too long`);
  });
  const taken: string[][] = [];
  for (let from = 0; from < text.length; from += piece)
    taken.push(...rows.take(text.slice(from, from + piece)));
  return [...taken, ...rows.end()];
}

test.each<[what: string, text: string, rows: string[][]]>([
  ["line ends of every kind", "a\nb\r\nc\rd", [["a"], ["b"], ["c"], ["d"]]],
  ["no line behind the last end", "a,b\n", [["a", "b"]]],
  ["a blank line keeps its place", "a\n\nb", [["a"], [""], ["b"]]],
  ["delimiters and line ends in quotes", '"a,b\nc",d', [["a,b\nc", "d"]]],
  ["doubled quotes in quotes", '"say ""so""",x', [['say "so"', "x"]]],
  ["a quote within a cell", '6" slab,x', [['6" slab', "x"]]],
  ["a blank last cell", "a,", [["a", ""]]],
  ["a quote that stays open", 'a,"b\nc', [["a", "b\nc"]]],
])("CSV with %s (RFC 4180)", (_, text, rows) => {
  expect(rowsOf(text)).toEqual(rows);
});

test("rows come back as they were written, wherever the text is cut", () => {
  const cell = fc.string({ unit: fc.constantFrom("a", '"', ",", "\n", "\r", " ", "é", "5") });
  const row = fc.array(cell, { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(fc.array(row, { maxLength: 4 }), fc.integer({ min: 1, max: 9 }), (rows, piece) => {
      const written = rows.map((cells) =>
        cells.map((each) => `"${each.replaceAll('"', '""')}"`).join(","),
      );
      expect(rowsOf(written.map((line) => `${line}\r\n`).join(""), ",", piece)).toEqual(rows);
    }),
  );
});

test.each([
  ["a,b,c\n1,2,3\n", ","],
  ["a;b\n1,5;2,5\n3,5;4,5\n", ";"],
  ["a\tb, c\n1\t2\n", "\t"],
  ["a|b\n1|2\n", "|"],
  ['"a;b;c;d",e\n1,2\n', ","],
  ["alone\n1\n", ","],
])("the delimiter of %j is %j", (text, delimiter) => {
  expect(delimiterOf(text)).toBe(delimiter);
});

test.each([
  ["UTF-8", Buffer.from("Témoin,5"), "utf-8"],
  ["UTF-16 with a mark", Buffer.from("\uFEFFa,5", "utf16le"), "utf-16le"],
  ["UTF-16 without a mark", Buffer.from("Sample,5", "utf16le"), "utf-16le"],
  ["UTF-16, the other way round", Buffer.from("\uFEFFa,5", "utf16le").swap16(), "utf-16be"],
  ["an older Windows program", Buffer.from("Témoin", "latin1"), "windows-1252"],
])("text of %s is told", (_, bytes, encoding) => {
  expect(encodingOf(bytes)).toBe(encoding);
});

test("the beginning of a text may end within a character", () => {
  expect(encodingOf(Buffer.from("Té").subarray(0, 2), false)).toBe("utf-8");
});

test("NUL characters are left out and counted, and an open quote is told by its line", () => {
  const { rows, nulCharacters, openQuote } = readCsv(Buffer.from('a,\0b\n1,\0\0"2\n3,4\n'), 10);
  expect(nulCharacters).toBe(3);
  expect(rows[0]).toEqual(["a", "b"]);
  expect(openQuote).toBe(2);
});

test.each([
  ["5.25", ",", 5.25],
  ["-0.5", ",", -0.5],
  ["007", ",", "007"],
  ["5,25", ";", 5.25],
  ["1,250", ";", "1,250"],
  ["5,25", ",", "5,25"],
  ["+5", ",", "+5"],
  ["5.", ",", "5."],
])("the cell %s, set off by %s, holds %p", (text, delimiter, value) => {
  expect(csvCell(text, { delimiter })).toBe(value);
});

// Common practice: a spreadsheet set to German or Spanish saves a number with its thousands set off so.
test.each([
  ["a;b;c\n5,25;1.250;x\n", [5.25, 1250, "x"]],
  ["a;b;c\n5.25;1.250;x\n", [5.25, 1.25, "x"]],
  ["a;b;c\n5;1.250;x\n", [5, 1.25, "x"]],
  ["a;b;c\n5,25;1.250;6.5\n", [5.25, 1.25, 6.5]],
  ['a,b,c\n"5,25",1.250,x\n', ["5,25", "1.250", "x"]],
  ["a;b;c\n5,25;1.250.000;-1.250\n", [5.25, 1250000, -1250]],
])("the second line of %j holds %p", (text, cells) => {
  expect(readCsv(Buffer.from(text), 10).rows[1]).toEqual(cells);
});
