import { readFileSync } from "node:fs";
import { writeXlsx } from "hucre/xlsx";
import { Problem } from "../../src/measure/problem";
import { openFile } from "../../src/workbench/files/open-file";

jest.mock("@univerjs/core", () =>
  jest.requireActual("../hosts/workbench/headless-univer").loadHeadlessUniver(),
);

const csv = (text: string, encoding: BufferEncoding = "utf8") => Buffer.from(text, encoding);

async function cellsOf(name: string, bytes: Uint8Array) {
  const { data } = await openFile("book", name, bytes);
  const { sheets = {}, sheetOrder = [] } = data;
  return sheets[sheetOrder[0]!]!.cellData!;
}

test.each([
  ["a number", "5.25", { v: 5.25, t: 2 }],
  ["a negative number", "-0.5", { v: -0.5, t: 2 }],
  ["an id with zeros in front stays as it is", "007", { v: "007", t: 1 }],
  ["a decimal comma stays for the check to ask about", '"5,25"', { v: "5,25", t: 1 }],
  ["a date stays as it is written", "2026-05-31", { v: "2026-05-31", t: 1 }],
  ["a formula stays text", "=1+1", { v: "=1+1", t: 1 }],
])("CSV: %s", async (_, cell, content) => {
  const cells = await cellsOf("north-yard.csv", csv(`Header,Other\n${cell},x\n`));
  expect(cells[1]![0]).toEqual(content);
});

test.each([
  ["semicolons", csv("Sample;Air\nS-1;5.25\n")],
  ["tabs", csv("Sample\tAir\nS-1\t5.25\n")],
  ["a byte order mark", csv("\uFEFFSample,Air\nS-1,5.25\n")],
])("CSV with %s", async (_, bytes) => {
  const cells = await cellsOf("north-yard.csv", bytes);
  expect(cells[0]![0]).toMatchObject({ v: "Sample" });
  expect(cells[1]![1]).toMatchObject({ v: 5.25 });
});

test.each([
  ["is read where semicolons set the cells off", "5,25", { v: 5.25, t: 2 }],
  ["is read behind a zero", "0,125", { v: 0.125, t: 2 }],
  ["stays where it could set off thousands", "1,250", { v: "1,250", t: 1 }],
])("CSV: a decimal comma %s", async (_, cell, content) => {
  const cells = await cellsOf("yard.csv", csv(`Sample;Air\nS-1;${cell}\n`));
  expect(cells[1]![1]).toEqual(content);
});

test("CSV: 100,000 tests below a header open, the last one too", async () => {
  const cells = await cellsOf("year.csv", csv(`Reading\n${"5.25\n".repeat(100_000)}`));
  expect(cells[100_000]![0]).toEqual({ v: 5.25, t: 2 });
});

test("CSV of an older program, not in UTF-8", async () => {
  const cells = await cellsOf("yard.csv", csv("Temperature (°C)\n21\n", "latin1"));
  expect(cells[0]![0]).toMatchObject({ v: "Temperature (°C)" });
});

test("a workbook keeps values, dates, formulas, bold, fills and number formats", async () => {
  const bytes = await writeXlsx({
    sheets: [
      {
        name: "Loads",
        rows: [
          ["Sample", "Time", "Air"],
          ["S-1", new Date(Date.UTC(2026, 4, 31, 14, 5)), 5.25],
        ],
        cells: new Map([
          [
            "0,0",
            {
              value: "Sample",
              type: "string",
              style: {
                font: { bold: true },
                fill: { type: "pattern", pattern: "solid", fgColor: { rgb: "D9E8EE" } },
              },
            },
          ],
          [
            "1,2",
            {
              value: 5.25,
              type: "formula",
              formula: "_xldudf_FRESH_AIR(5.25)",
              formulaResult: 5.25,
              style: { numFmt: "0.00" },
            },
          ],
        ]),
      },
    ],
  });
  const cells = await cellsOf("loads.xlsx", bytes);
  expect(cells[0]![0]).toEqual({ v: "Sample", t: 1, s: { bl: 1, bg: { rgb: "#D9E8EE" } } });
  // Derived: 46173 days from 1899-12-30 to 2026-05-31, and 14:05 is 845 minutes of 1440.
  expect(cells[1]![1]).toMatchObject({ v: expect.closeTo(46173 + 845 / 1440, 6) });
  expect(cells[1]![2]).toEqual({ f: "=FRESH.AIR(5.25)", s: { n: { pattern: "0.00" } } });
});

test("the sample opens, and cells that a formula fills are left to it", async () => {
  const cells = await cellsOf("day.xlsx", readFileSync("samples/day-of-tests.xlsx"));
  expect(cells[0]![0]).toMatchObject({ v: "Sample" });
  expect(cells[1]![23]).toMatchObject({ f: "=FRESH.CHECK(A1:R1,A2:R37)" });
  expect(cells[2]![23]?.v).toBeUndefined();
});

test.each([
  ["notes.xlsx", Buffer.from("not a workbook"), "file-of-another-kind"],
  ["empty.csv", Buffer.from(""), "file-empty"],
])("%s is refused with a sentence", async (name, bytes, id) => {
  await expect(openFile("book", name, bytes)).rejects.toMatchObject({ id });
  await expect(openFile("book", name, bytes)).rejects.toBeInstanceOf(Problem);
});
