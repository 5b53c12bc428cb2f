import { COLUMNS, ROWS, type DayCell } from "./day-of-tests";
import { stored } from "./day-of-tests-sheets";
import { call } from "./formula";
import {
  addressOf,
  type SampleCell,
  type SampleSheet,
  type SampleValidation,
  type Value,
} from "./sheet";
import { readMeSheet } from "./read-me-sheet";

/** Room for so many tests. */
const TESTS = 40;
/** Two sound tests of the day as examples to be typed over, by their samples. */
const EXAMPLES = ["S-02", "S-04"];
/** What stands above the table, two labels a row; the cells behind them are to be filled. */
const LABELS = [
  ["Project:", "Location:"],
  ["Specification:", "Tested by:"],
  ["Meter:", "Meter last checked:"],
] as const;
const HEADER_ROW = LABELS.length + 1;
/** The column of the second label of a row. */
const SECOND = 5;

/** The columns of the day of tests, and what is measured of the same sample; who tested stands above. */
const columns = [
  ...COLUMNS.filter(({ header }) => header !== "Tested by" && header !== "Remarks"),
  { header: "Density (lb/ft3)", width: 12, shown: "plain" },
  { header: "Concrete temperature (F)", width: 12, shown: "plain" },
  { header: "Slump (in)", width: 8, shown: "plain" },
  { header: "Remarks", width: 24, shown: "plain" },
] as const;
const headers: Value[] = columns.map(({ header }) => header);

/** Days between which a day of a test lies, as a spreadsheet counts them: 2020-01-01 and 2099-12-31. */
const [FIRST_DAY, LAST_DAY] = [43831, 73050] as const;
const READING = { type: "decimal", from: 0, to: 9 } as const;
const PERCENT = { type: "decimal", from: 0, to: 25 } as const;
const SAYS_READING =
  "In %, to the nearest quarter, 0 to 9, with the cups not counted in. Leave blank what was not taken.";

const ALLOWED: Readonly<Record<string, Omit<SampleValidation, "range">>> = {
  Date: {
    allows: { type: "date", from: FIRST_DAY, to: LAST_DAY },
    says: "The day of the test, such as 2026-06-09.",
  },
  Time: { allows: { type: "time", from: 0, to: 0.99999 }, says: "The time of day, such as 06:40." },
  "First reading (%)": { allows: READING, says: SAYS_READING },
  "Second reading (%)": { allows: READING, says: SAYS_READING },
  "Third reading (%)": { allows: READING, says: SAYS_READING },
  Cups: {
    allows: { type: "whole", from: 0, to: 9 },
    says: "Calibrated cups of water, a whole number. Blank is none.",
  },
  "Alcohol (oz)": {
    allows: { type: "decimal", from: 0, to: 80 },
    says: "All the alcohol, in fluid ounces. Write 0 where there was none: a blank is not a zero.",
  },
  "Foam (divisions)": {
    allows: { type: "decimal", from: 0, to: 9 },
    says: "Divisions of foam that hide the level, in %.",
  },
  "Time to settle (min)": {
    allows: { type: "decimal", from: 0, to: 60 },
    says: "Minutes until the level stood still.",
  },
  "Packed concrete": {
    allows: { type: "list", values: ["yes", "no"] },
    says: "Whether undisturbed concrete was left in the bowl: yes or no.",
  },
  "Reported air (%)": { allows: PERCENT, says: "The air content as reported, in %." },
  "Low (%)": { allows: PERCENT, says: "The least air content that is specified, in %." },
  "High (%)": { allows: PERCENT, says: "The most air content that is specified, in %." },
};

function examples(): Value[][] {
  return EXAMPLES.map((sample) => {
    const row = ROWS.find(([first]) => first === sample)!;
    const held = new Map<string, DayCell>(COLUMNS.map(({ header }, i) => [header, row[i]!]));
    return columns.map(({ header, shown }) =>
      header === "Remarks" ? "example" : stored(held.get(header) ?? null, shown),
    );
  });
}

function tests(): SampleSheet {
  const blank = (): Value[] => columns.map(() => null);
  const given = examples();
  const rows = [...given, ...Array.from({ length: TESTS - given.length }, blank)];
  const area = (from: number, to: number) =>
    `${addressOf(from, 0)}:${addressOf(to, columns.length - 1)}`;
  const last = HEADER_ROW + TESTS;
  const checked = call(
    "CHECK",
    { text: area(HEADER_ROW, HEADER_ROW), cells: [headers] },
    { text: area(HEADER_ROW + 1, last), cells: rows },
  );
  const plain = (v: Value): SampleCell | null => (v === null ? null : { v });
  const label = (row: readonly [string, string]): (SampleCell | null)[] => [
    { v: row[0] },
    ...Array<null>(SECOND - 1).fill(null),
    { v: row[1] },
  ];
  const formats = {
    plain: undefined,
    hundredths: "0.00",
    day: "yyyy-mm-dd",
    time: "hh:mm",
  } as const;
  return {
    name: "Tests",
    columns: [
      ...columns.map(({ width, shown }) => ({ width, format: formats[shown] })),
      { width: 3 },
      { width: 13 },
      { width: 10, format: "0.00" },
      { width: 15 },
      { width: 90 },
    ],
    headerRows: HEADER_ROW + 1,
    wrapped: [],
    table: area(HEADER_ROW, last),
    tableHeader: HEADER_ROW,
    validations: columns.flatMap(({ header }, i) => {
      const range = `${addressOf(HEADER_ROW + 1, i)}:${addressOf(last, i)}`;
      return ALLOWED[header] ? [{ range, ...ALLOWED[header] }] : [];
    }),
    rows: [
      ...LABELS.map(label),
      [],
      [...headers.map(plain), null, ...["Test", "Air content", "Verdict", "Findings"].map(plain)],
      ...rows.map((row, i) => [...row.map(plain), null, ...checked[i]!]),
    ],
  };
}

function readMe(): SampleSheet {
  return readMeSheet([
    "Volumetric air tests: a sheet to begin with",
    "",
    "Tests: fill in what stands above the table, type over the two examples and go on below them, one row a test.",
    "Beside the table one formula, =FRESH.CHECK(headers, rows), says of each row whether the test stands, its air content, the verdict and what is wrong.",
    "Columns that are not needed can be taken out, and others put in: they are known by their headers. Write the unit into the header.",
    "What is typed is looked at while it is typed; a warning can be answered with yes where the record really says so.",
  ]);
}

/** The workbook for a laboratory that begins with nothing. */
export function templateSheets(): SampleSheet[] {
  return [tests(), readMe()];
}
