import { dateFromCell } from "../../src/measure/date";
import { minuteOfDayFromCell } from "../../src/measure/time-of-day";
import { Problem } from "../../src/measure/problem";
import { COLUMNS, ROWS, SCENARIO, type DayCell, type Shown } from "./day-of-tests";
import { call, callForOne, quoted, type Argument } from "./formula";
import { addressOf, type SampleCell, type SampleSheet, type Value } from "./sheet";
import { readMeSheet } from "./read-me-sheet";

const FORMATS: Readonly<Record<Shown, string | undefined>> = {
  plain: undefined,
  hundredths: "0.00",
  day: "yyyy-mm-dd",
  time: "hh:mm",
};
const MINUTES_IN_A_DAY = 1440;

const headers: Value[] = COLUMNS.map(({ header }) => header);
const rows: Value[][] = ROWS.map((row) => row.map((cell, i) => stored(cell, COLUMNS[i]!.shown)));
const lastColumn = headers.length - 1;

/** Days and times as a spreadsheet keeps them. */
export function stored(cell: DayCell, shown: Shown): Value {
  if (cell === null) return null;
  if (shown === "day") return Problem.unless(dateFromCell(cell))!;
  if (shown === "time") return Problem.unless(minuteOfDayFromCell(cell))! / MINUTES_IN_A_DAY;
  return cell;
}

function at(row: number, header: string): Argument {
  const column = headers.indexOf(header);
  return { text: addressOf(row + 1, column), cells: [[rows[row]![column]!]] };
}

function range(sheet: string, fromRow: number, toRow: number): string {
  return `${sheet}${addressOf(fromRow, 0)}:${addressOf(toRow, lastColumn)}`;
}

/** The headers and the rows as arguments, from the same sheet or from another. */
function wholeTable(sheet = ""): [Argument, Argument] {
  return [
    { text: range(sheet, 0, 0), cells: [headers] },
    { text: range(sheet, 1, rows.length), cells: rows },
  ];
}

/** Next step, final reading, correction and air of one row, each by its own function. */
function stepsOf(row: number): SampleCell[] {
  const taken = ["First reading (%)", "Second reading (%)", "Third reading (%)"].map((header) =>
    at(row, header),
  );
  const alcohol = [at(row, "Alcohol (oz)"), quoted("oz")];
  const final = callForOne("READING.FINAL", ...taken);
  const reading = { text: addressOf(row + 1, lastColumn + 3), cells: [[final.v ?? "#N/A"]] };
  return [
    callForOne("READING.NEXT", ...taken),
    final,
    callForOne("ALCOHOL.CORRECTION", ...alcohol),
    callForOne("AIR", reading, at(row, "Cups"), ...alcohol),
  ];
}

function loads(): SampleSheet {
  const checked = call("CHECK", ...wholeTable());
  const worked = ["Next", "Final reading", "Correction", "Air"];
  const judged = ["Test", "Air content", "Specification", "Findings"];
  const plain = (v: Value): SampleCell | null => (v === null ? null : { v });
  return {
    name: "Loads",
    columns: [
      ...COLUMNS.map(({ width, shown }) => ({ width, format: FORMATS[shown] })),
      { width: 3 },
      { width: 17 },
      ...[10, 13, 10].map((width) => ({ width, format: "0.00" })),
      { width: 13 },
      { width: 10, format: "0.00" },
      { width: 15 },
      { width: 90 },
    ],
    headerRows: 1,
    wrapped: [],
    table: range("", 0, rows.length),
    rows: [
      [...headers.map(plain), null, ...[...worked, ...judged].map(plain)],
      ...rows.map((row, i) => [...row.map(plain), null, ...stepsOf(i), ...checked[i]!]),
    ],
  };
}

function check(): SampleSheet {
  const found = call("FINDINGS", ...wholeTable("Loads!"));
  const explanation =
    "Every finding in the table of the sheet Loads. Row 1 is the first row under its headers.";
  return {
    name: "Check",
    columns: [7, 9, 25, 8, 22, 18, 110, 25].map((width) => ({ width })),
    headerRows: 3,
    wrapped: [6],
    rows: [[{ v: explanation }], [], ...found],
  };
}

function readMe(): SampleSheet {
  const { project, owner, laboratory, supplier, date } = SCENARIO;
  return readMeSheet([
    "A day of volumetric air tests",
    "",
    `${project}. For ${owner}, tested by ${laboratory}, concrete by ${supplier}, ${date}.`,
    "The bridge, the people, the companies and the numbers are invented. Some tests are sound, some void, some reported wrongly and some at a limit.",
    "",
    "Loads: the field book, one row a test. To its right, columns T to W work out each step with a function of its own, and X to AA are one formula, =FRESH.CHECK(headers, rows).",
    "Check: every finding, by =FRESH.FINDINGS(headers, rows).",
    "The formulas need the add-in. A cell that shows #NAME? waits for it: see docs/install.md. The results in the file are those of the functions when the file was made.",
  ]);
}

/** The sheets of the sample workbook, with the results that the functions give now. */
export function dayOfTestsSheets(): SampleSheet[] {
  return [loads(), check(), readMe()];
}
