import { dateFromCell } from "../../src/measure/date";
import { Problem } from "../../src/measure/problem";
import { SETUP_SHEET } from "../../src/reading/setup/setup-sheet-name";
import { call, type Argument } from "./formula";
import { addressOf, type SampleCell, type SampleSheet, type Value } from "./sheet";
import { readMeSheet } from "./read-me-sheet";
import { REVIEW_SHEET } from "../../src/review/review-entry";
import { WEEK, WEEK_HEADERS, WEEK_ROWS, WEEK_SETUP } from "./week-of-mixes";
import { weekReview } from "./week-review";

const DATE = WEEK_HEADERS.indexOf("Date");
const last = WEEK_HEADERS.length - 1;

const rows: Value[][] = WEEK_ROWS.map((row) =>
  row.map((cell, i) => (i === DATE ? Problem.unless(dateFromCell(cell))! : cell)),
);
const width = WEEK_SETUP.reduce((most, row) => Math.max(most, row.length), 0);
const setup: Value[][] = WEEK_SETUP.map((row) =>
  Array.from({ length: width }, (_, i) => row[i] ?? null),
);

const leftOut: Argument = { text: "", cells: [[null]] };

function argumentsOf(sheet = ""): Argument[] {
  const range = (from: number, to: number) =>
    `${sheet}${addressOf(from, 0)}:${addressOf(to, last)}`;
  const setupEnd = addressOf(setup.length - 1, width - 1);
  return [
    { text: range(0, 0), cells: [[...WEEK_HEADERS]] },
    { text: range(1, rows.length), cells: rows },
    leftOut,
    leftOut,
    { text: `'${SETUP_SHEET}'!A1:${setupEnd}`, cells: setup },
  ];
}

const plain = (v: Value): SampleCell | null => (v === null ? null : { v });

function tests(): SampleSheet {
  const checked = call("CHECK", ...argumentsOf());
  const judged = ["Test", "Air content", "Specification", "Findings"];
  return {
    name: "Tests",
    columns: [
      { width: 9 },
      { width: 12, format: "yyyy-mm-dd" },
      { width: 15 },
      { width: 10, format: "0.00" },
      { width: 10, format: "0.00" },
      ...[8, 11, 11, 10, 11, 8, 3].map((characters) => ({ width: characters })),
      { width: 11 },
      { width: 11, format: "0.00" },
      { width: 13 },
      { width: 90 },
    ],
    headerRows: 1,
    wrapped: [],
    rows: [
      [...WEEK_HEADERS.map(plain), null, ...judged.map(plain)],
      ...rows.map((row, i) => [...row.map(plain), null, ...checked[i]!]),
    ],
  };
}

function setupSheet(): SampleSheet {
  const widths = [
    14,
    18,
    7,
    3,
    20,
    9,
    3,
    15,
    8,
    10,
    7,
    7,
    16,
    15,
    10,
    ...Array<number>(6).fill(19),
    14,
  ];
  return {
    name: SETUP_SHEET,
    columns: widths.map((characters) => ({ width: characters })),
    headerRows: 2,
    wrapped: [],
    rows: setup.map((row) => row.map(plain)),
  };
}

function reviewSheet(): SampleSheet {
  const widths = [20, 8, 9, 8, 30, 18, 8, 30, 60, 11, 52, 10, 10, 9];
  return {
    name: REVIEW_SHEET,
    columns: widths.map((characters) => ({ width: characters })),
    headerRows: 1,
    wrapped: [8, 10],
    rows: weekReview(rows).map((row) => row.map((cell) => plain(cell as Value))),
  };
}

function readMe(): SampleSheet {
  return readMeSheet([
    "A week of volumetric air tests of three mixes",
    "",
    `${WEEK.project}, tested by ${WEEK.laboratory}. The site, the people, the companies and the numbers are invented.`,
    "Tests: the sheet of a laboratory that heads its columns in its own way. To its right, M to P are one formula, =FRESH.CHECK(headers, rows, , , setup).",
    `${SETUP_SHEET}: what “Pointer A”, “Pointer B” and “Spirit” hold, and what is specified for each mix. The pane reads this sheet by itself; a formula is given its cells.`,
    `${REVIEW_SHEET}: what the reviewer decided of what was found, and a reading that was put right. The pane shows each decision with its finding, and writes new ones below.`,
    "The formulas need the add-in. The results in the file are those of the functions when the file was made.",
  ]);
}

/** The sheets of the sample workbook, with the results that the functions give now. */
export function weekOfMixesSheets(): SampleSheet[] {
  return [tests(), setupSheet(), reviewSheet(), readMe()];
}
