import { checkBlock } from "../../src/fieldsheet/check-table";
import type { CellValue } from "../../src/measure/cell-value";
import { isBlank } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";
import { fieldSaidBy } from "../../src/reading/labels";
import { BLIND_TABLES } from "./corpus/blind/tables";
import { SECOND_BLIND_TABLES } from "./corpus/blind-second/tables";
import { THIRD_BLIND_TABLES } from "./corpus/blind-third/tables";
import { LANGUAGES } from "./corpus/languages";

/*
 * Sheets whose rows are no tests: a row for each value, as databases write it, and several tests beside one another
 * under titles of their own. That sheets are kept so is common practice.
 */

type Row = readonly CellValue[];
type Rows = readonly Row[];

function block(...rows: Rows): Rows {
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
}

function checked(rows: Rows) {
  const result = checkBlock(rows);
  if (isIssue(result)) throw new Error(result.id);
  return result;
}

const said = (rows: Rows) =>
  checked(rows)
    .results.filter(({ state }) => state !== "")
    .map(({ sample, state, air }) => [sample, air ?? state]);

/* ASTM C173 Table 1, from memory: 4 pt of alcohol take 0.5 % off, 2 pt nothing. */
const LIST: Rows = [
  ["Sample ID", "Parameter", "Result", "Unit"],
  ["S-1", "First reading", 5.5, "%"],
  ["S-1", "Second reading", 5.5, "%"],
  ["S-1", "Alcohol", 2, "pt"],
  ["S-2", "First reading", 6, "%"],
  ["S-2", "Second reading", 6.25, "%"],
  ["S-2", "Alcohol", 4, "pt"],
];
const FROM_LIST = [
  ["S-1", 5.5],
  ["S-2", 5.75],
];

test.each<[string, Rows]>([
  ["each row with its name", LIST],
  [
    "names beside the first value only",
    LIST.map((row, at) => (at % 3 === 1 || at === 0 ? row : [null, ...row.slice(1)])),
  ],
  [
    "sorted by what was measured",
    [LIST[0]!, LIST[1]!, LIST[4]!, LIST[2]!, LIST[5]!, LIST[3]!, LIST[6]!],
  ],
  ["below a title", [["Results of the week"], [], ...LIST]],
  ["with blank rows between", [...LIST.slice(0, 4), [], ...LIST.slice(4)]],
  [
    "units in the names",
    LIST.map((row, at) =>
      at === 0 ? row : [row[0]!, `${String(row[1])} (${String(row[3])})`, row[2]!],
    ),
  ],
])("a list with a row for each value: %s", (_, rows) => {
  expect(said(block(...rows)).map(([, air]) => air)).toEqual(FROM_LIST.map(([, air]) => air));
});

test("what stands beside each value is the test's, and a value leads to its own cell", () => {
  const rows = LIST.map((row, at) =>
    ["2026-03-14", ...row].map((cell, c) => (at + c === 0 ? "Date" : cell)),
  );
  const { reading, results } = checked(block(...rows));
  expect(results.map(({ values }) => values.date !== undefined)).toEqual([true, true]);
  expect(reading.placeOf(1, "second")).toEqual({ row: 5, column: 3 });
  expect(reading.placeOf(1, "sample")).toEqual({ row: 4, column: 1 });
});

test.each([
  ["a list", LIST],
  [
    "tests beside one another",
    [
      ["Ticket", "Chute", null, null, "Pump", null, null],
      [null, "1st", "2nd", "Alcohol (pt)", "1st", "2nd", "Alcohol (pt)"],
      ["101", 5.5, 5.5, 2, 4.25, 4.25, 2],
    ],
  ],
] as [string, Rows][])("what stands once above %s holds for its tests", (_, rows) => {
  const { results } = checked(block(["Specified air:", "5.6 ± 1.2"], [], ...rows));
  expect(results.map(({ specification }) => specification)).toEqual([
    "within",
    _ === "a list" ? "within" : "below",
  ]);
});

test("a name that has a reading twice is two tests", () => {
  const rows = [...LIST.slice(0, 4), ...LIST.slice(1, 4)];
  expect(said(block(...rows))).toEqual([
    ["S-1", 5.5],
    ["S-1", 5.5],
  ]);
});

const BESIDE: Rows = [
  ["Ticket", "Chute", null, null, "Pump", null, null],
  [null, "1st", "2nd", "Alcohol (pt)", "1st", "2nd", "Alcohol (pt)"],
  ["101", 5.5, 5.5, 2, 4.5, 4.5, 2],
  ["102", 6, 6.25, 4, null, null, null],
];

test("tests beside one another are told apart by their titles, and a blank one is none", () => {
  expect(said(BESIDE)).toEqual([
    ["101 Chute", 5.5],
    ["101 Pump", 4.5],
    ["102 Chute", 5.75],
  ]);
  const { reading } = checked(BESIDE);
  expect(reading.placeOf(1, "second")).toEqual({ row: 2, column: 5 });
  expect(reading.placeOf(1, null)).toEqual({ row: 2, column: 4 });
  expect(reading.placeOf(1, "sample")).toEqual({ row: 2, column: 4 });
  expect(reading.placeOf(null, "load")).toEqual({ row: 0, column: 0 });
});

test("columns under another title are all tests', and are called by it", () => {
  const rows: Rows = [
    ["Ticket", "Chute", null, "Pump", null, "Slump", null],
    [null, "1st", "2nd", "1st", "2nd", "1st (in)", "2nd (in)"],
    ["101", 5.5, 5.5, 4.5, 4.5, 4, 4.5],
  ];
  const { results, reading } = checked(rows);
  expect(results.map(({ values: { first, second } }) => [first, second])).toEqual([
    [5.5, 5.5],
    [4.5, 4.5],
  ]);
  // Two slumps of a load: neither is taken by chance.
  expect(reading.unread.map(({ header }) => header)).toEqual(["1st (in)", "2nd (in)"]);
});

test.each<[string, string, string]>([
  ["Contractor", "Agency", "101"],
  ["Test 1", "Test 2", "101"],
  ["Sample A", "Sample B", "101"],
])("below “%s” and “%s”", (one, other) => {
  const rows = BESIDE.slice(0, 3).map((row, at) =>
    at === 0 ? ["Ticket", one, null, null, other, null, null] : row,
  );
  expect(said(rows)).toEqual([
    [`101 ${one}`, 5.5],
    [`101 ${other}`, 4.5],
  ]);
});

test("rolls beside one another are readings of one test", () => {
  const rows: Rows = [
    ["Sample", "Roll 1", null, "Roll 2", null],
    [null, "Reading", "Time", "Reading", "Time"],
    ["A", 5.5, "8:05", 5.5, "8:12"],
    ["B", 6, "9:05", 6.25, "9:12"],
  ];
  expect(said(rows)).toEqual([
    ["A", 5.5],
    ["B", 6.25],
  ]);
});

test.each(["Slump", "Pressure meter"])("a group of “%s” is no test of this method", (title) => {
  const rows: Rows = [
    ["Sample", "Air", null, title, null],
    [null, "1st", "2nd", "1st", "2nd"],
    ["A", 5.5, 5.5, 4, 4],
    ["B", 6, 6, 4, 4],
  ];
  expect(said(rows)).toEqual([
    ["A", 5.5],
    ["B", 6],
  ]);
});

test.each([
  [
    "a list",
    ["Sample", "Parameter", "Value"],
    (i: number): Rows => [
      [`S-${i}`, "First reading", 5.5],
      [`S-${i}`, "Alcohol (pt)", 2],
    ],
  ],
  [
    "tests side by side",
    [null, "Chute", null, "Pump", null],
    (i: number): Rows => (i === 0 ? [["Load", "1st", "2nd", "1st", "2nd"]] : [[i, 5.5, 5.5, 5, 5]]),
  ],
] as [string, Row, (i: number) => Rows][])(
  "%s that is too long is not read as if its rows were tests",
  (_, header, rows) => {
    const long = checkBlock([header, ...Array.from({ length: 1_100 }, (_, i) => rows(i)).flat()]);
    expect(isIssue(long) && long.id).toBe("rows-are-no-tests");
  },
);

const TABLES = [
  ...LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]),
  ...[BLIND_TABLES, SECOND_BLIND_TABLES, THIRD_BLIND_TABLES].flat().flatMap(({ tables }) => tables),
];
const FIRST = new Set(["first", "final"]);

/** Tables of one header row in which every header says a field by itself, and no two the same. */
const PLAIN = TABLES.flatMap(({ name, headers, rows }) => {
  const [header] = headers;
  const fields = header?.map((cell) => fieldSaidBy(cell)) ?? [];
  const isPlain =
    headers.length === 1 && fields.every(Boolean) && new Set(fields).size === fields.length;
  const at = fields.findIndex((field) => field === "sample" || field === "load");
  const has = fields.some((field) => FIRST.has(field!));
  const own = rows.filter((row) => !isBlank(row[at] === "" ? null : row[at]));
  return isPlain && has && at >= 0 && own.length > 1
    ? [{ name, header: header!, rows: own, at }]
    : [];
});

test("on the tables of the corpus, a list of values says what the table says", () => {
  const other = PLAIN.filter(({ header, rows, at }) => {
    const list = rows.flatMap((row) =>
      header.flatMap((parameter, c) =>
        c === at || row[c] === "" || row[c] === null ? [] : [[row[at]!, parameter, row[c]!]],
      ),
    );
    const named = (result: ReturnType<typeof checkBlock>) =>
      isIssue(result)
        ? result.id
        : result.results
            .filter(({ state }) => state !== "")
            .map(({ state, air }) => `${state} ${air}`)
            .join();
    const table = block(header, ...rows).map((row) =>
      row.map((cell) => (cell === "" ? null : cell)),
    );
    return (
      named(checkBlock(table)) !== named(checkBlock([[header[at]!, "Parameter", "Value"], ...list]))
    );
  });
  expect(PLAIN.length).toBeGreaterThan(20);
  expect(other.map(({ name }) => name)).toEqual([]);
});
