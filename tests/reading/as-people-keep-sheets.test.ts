import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";
import { FIELDS, type FieldId } from "../../src/reading/fields";
import { findTestsIn, readTestsInSteps } from "../../src/reading/read-sheet";
import { inOneGo } from "../../src/reading/steps";
import { BLIND_TABLES } from "./corpus/blind/tables";
import { SECOND_BLIND_TABLES } from "./corpus/blind-second/tables";
import { THIRD_BLIND_TABLES } from "./corpus/blind-third/tables";
import { FOURTH_BLIND_TABLES } from "./corpus/blind-fourth/tables";
import type { HeaderCase } from "./corpus/header-case";
import { LANGUAGES } from "./corpus/languages";

type Row = readonly CellValue[];
type Rows = readonly Row[];

/** Every table of the corpus in which tests are found. */
const TABLES: readonly HeaderCase[] = [
  ...LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]),
  ...BLIND_TABLES.flatMap(({ tables }) => tables),
  ...SECOND_BLIND_TABLES.flatMap(({ tables }) => tables),
  ...THIRD_BLIND_TABLES.flatMap(({ tables }) => tables),
  ...FOURTH_BLIND_TABLES.flatMap(({ tables }) => tables),
];

const IDS = Object.keys(FIELDS) as FieldId[];

/** What is read of each test of a sheet, as text; `undefined` where no tests are found. */
function read(block: Rows, fields: readonly FieldId[] = IDS): string[] | undefined {
  const width = Math.max(...block.map((row) => row.length));
  const whole = block.map((row) =>
    Array.from({ length: width }, (_, at) => (row[at] === "" ? null : (row[at] ?? null))),
  );
  const found = findTestsIn(whole);
  if (isIssue(found)) return undefined;
  const { records } = inOneGo(readTestsInSteps(found));
  return records
    .filter(({ blank }) => !blank)
    .map(({ values, unreadable }) =>
      JSON.stringify(fields.map((field) => [values[field], unreadable[field]?.id])),
    );
}

/** The tables in which tests are found, each with what is read of it as it stands. */
const READ = TABLES.flatMap((table) => {
  const before = read([...table.headers, ...table.rows]);
  return before ? [{ ...table, before }] : [];
});

const isDay = (cell: CellValue) => typeof cell === "number" && cell > 30_000 && cell < 70_000;
const isTime = (cell: CellValue) => typeof cell === "number" && cell > 0 && cell < 1;
const isPlain = (cell: CellValue): cell is number =>
  typeof cell === "number" && !isDay(cell) && !isTime(cell);

const inHeaders = (change: (header: string) => string) => (headers: Rows, rows: Rows) => [
  ...headers.map((row) => row.map((cell) => change(String(cell)))),
  ...rows,
];
/** The same in the last header row, where something stands. */
const inOwnHeaders =
  (change: (header: string, at: number) => string) => (headers: Rows, rows: Rows) => [
    ...headers.map((row, level) =>
      row.map((cell, at) =>
        last(headers, level) && cell !== "" ? change(String(cell), at) : cell,
      ),
    ),
    ...rows,
  ];
const inCells = (change: (cell: CellValue) => CellValue) => (headers: Rows, rows: Rows) => [
  ...headers,
  ...rows.map((row) => row.map(change)),
];
const last = (headers: Rows, level: number) => level === headers.length - 1;

/** What people do to a sheet without changing a test of it. */
const KEPT: Readonly<Record<string, (headers: Rows, rows: Rows) => Rows>> = {
  "a title and blank rows above": (headers, rows) => [
    [],
    ["Daily log of concrete"],
    [],
    ...headers,
    ...rows,
  ],
  "labels with their values above": (headers, rows) => [
    ["Project:", "North quay"],
    ["Contractor:", "Alder & Sons"],
    ...headers,
    ...rows,
  ],
  "a blank row after each test": (headers, rows) => [
    ...headers,
    ...rows.flatMap((row) => [row, []]),
  ],
  "a running number in front": (headers, rows) => [
    ...headers.map((row, level) => [last(headers, level) ? "#" : "", ...row]),
    ...rows.map((row, at) => [at + 1, ...row]),
  ],
  "notes behind": (headers, rows) => [
    ...headers.map((row, level) => [...row, last(headers, level) ? "Notes" : ""]),
    ...rows.map((row) => [...row, "placed, pump line moved at noon"]),
  ],
  "remarks and signatures below": (headers, rows) => [
    ...headers,
    ...rows,
    [],
    ["Remarks: windy, all loads placed"],
    ["Tested by T. Alder", "", "Checked by"],
    ["Page 1 of 1"],
  ],
  "a row of means below": (headers, rows) => [
    ...headers,
    ...rows,
    ["Average", ...rows[0]!.slice(1).map((cell) => (typeof cell === "number" ? 5.37 : null))],
  ],
  "a deviation below": (headers, rows) => [
    ...headers,
    ...rows,
    [],
    [null, "Std. dev.", ...rows[0]!.slice(2).map((cell) => (isPlain(cell) ? 0.37 : null))],
  ],
  "headers broken over lines": inHeaders((header) => header.replace(/ (?=\S+$)/, "\n")),
  "headers with a colon": inOwnHeaders((header) => `${header}:`),
  "headers with the star of what has to be filled in": inOwnHeaders((header) => `${header} *`),
  "numbered headers": inOwnHeaders((header, at) => `${at + 1}. ${header}`),
  "headers with more spaces": inHeaders((header) => ` ${header.replace(/ /g, "  ")} `),
  "headers with spaces that do not break": inHeaders((header) => header.replace(/ /g, "\u00a0")),
  "numbers kept as texts": inCells((cell) => (isPlain(cell) ? String(cell) : cell)),
  "spaces around everything": inCells((cell) =>
    isPlain(cell) || typeof cell === "string" ? ` ${cell} ` : cell,
  ),
  "decimal commas": inCells((cell) =>
    isPlain(cell) && /\.\d{1,2}$/.test(String(cell)) ? String(cell).replace(".", ",") : cell,
  ),
};

/** Tables whose last header row holds units: there a number, a colon or a star stands behind a unit. */
const UNITS_BELOW = Object.fromEntries(
  [
    "form transcribed with a row of units",
    "central chilena con fila de unidades",
    "en-tête avec ligne d'unités",
    "Laborblatt mit Zeile der Einheiten",
    "presa, con renglón de unidades",
    "Metric lab, units in second row",
  ].map((name) => [name, "nobody writes so behind a unit"] as const),
);

/** Tables that are not read the same then, each with the reason why that is right or has to be borne. */
const OTHERWISE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "labels with their values above": {
    "not our test at all": "nothing in it is read, so the labels have as much to say",
  },
  "headers with a colon": UNITS_BELOW,
  "headers with the star of what has to be filled in": UNITS_BELOW,
  "numbered headers": { ...UNITS_BELOW, "worksheet with a row of units": "the same" },
  "numbers kept as texts": {
    "column of a method among others": "no reading; a value and its unit look like labels",
  },
  "spaces around everything": {
    "column of a method among others": "no reading; a value and its unit look like labels",
  },
};

/** What nobody called is called by the running number then; that is looked at with the names. */
const NOT_COMPARED: Readonly<Record<string, readonly FieldId[]>> = {
  "a running number in front": ["sample"],
};

/** A third of the tables for each of these ways; all of them on demand: EVERY=1 npx jest as-people. */
const THIRDS = process.env.EVERY ? 1 : 3;
const inTurn = (turn: number) => READ.filter((_, at) => at % THIRDS === turn % THIRDS);

test.each(Object.entries(KEPT).map(([name, keep], turn) => [name, keep, inTurn(turn)] as const))(
  "with %s a sheet is read as without",
  (name, keep, tables) => {
    const without = NOT_COMPARED[name];
    const fields = without ? IDS.filter((field) => !without.includes(field)) : IDS;
    const changed = tables.filter(({ headers, rows, before }) => {
      const plain = without ? read([...headers, ...rows], fields) : before;
      return JSON.stringify(read(keep(headers, rows), fields)) !== JSON.stringify(plain);
    });
    const known = tables.map((table) => table.name).filter((each) => OTHERWISE[name]?.[each]);
    expect(changed.map((table) => table.name)).toEqual(known);
  },
);

test("with its rows the other way round a sheet is read so too", () => {
  const changed = inTurn(1).filter(({ headers, rows, before }) => {
    const after = read([...headers, ...[...rows].reverse()]);
    // Of several tests in a row the first stays the first.
    return JSON.stringify(after?.sort()) !== JSON.stringify([...before].sort());
  });
  expect(changed.map(({ name }) => name)).toEqual([]);
});

// A title above the header that is not needed to read it is said to be a test without a reading.
test("with its header once more among the tests a sheet is read as without", () => {
  const changed = inTurn(2).filter(({ headers, rows, before }) => {
    const after = read([...headers, ...rows, ...headers, ...rows]);
    return headers.length === 1 && JSON.stringify(after) !== JSON.stringify([...before, ...before]);
  });
  expect(changed.map(({ name }) => name)).toEqual([]);
});
