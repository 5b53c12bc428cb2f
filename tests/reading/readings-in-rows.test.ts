import fc from "fast-check";
import { checkBlock, checkTable } from "../../src/fieldsheet/check-table";
import { checkedRows } from "../../src/fieldsheet/result-tables";
import type { CellValue } from "../../src/measure/cell-value";
import { isIssue } from "../../src/measure/issue";

type Rows = readonly (readonly CellValue[])[];

function checked(
  headers: readonly string[],
  rows: Rows,
  options?: Parameters<typeof checkTable>[1],
) {
  const result = checkTable({ headers, rows }, options);
  if (isIssue(result)) throw new Error(result.id);
  return result;
}

const airs = (headers: readonly string[], rows: Rows) =>
  checked(headers, rows).results.map(({ state, air }) => air ?? state);

const HEADERS = ["Sample", "Roll", "Reading (%)", "Alcohol (pt)", "Cups"];
const LONG: Rows = [
  ["S1", 1, 5.5, 2, 0],
  ["S1", 2, 5.5, 2, 0],
  ["S2", 1, 6, 2, 0],
  ["S2", 2, 6.25, 2, 0],
  ["S2", 3, 6.25, 2, 0],
];

/** Sheets with a row for each reading, and what the test in each row comes to; further readings have none. */
const TOGETHER: readonly (readonly [
  name: string,
  headers: readonly string[],
  rows: Rows,
  said: readonly unknown[],
])[] = [
  ["rolls counted", HEADERS, LONG, [5.5, "", 6.25, "", ""]],
  [
    "names only beside the first reading",
    HEADERS,
    LONG.map((row) => (row[1] === 1 ? row : [null, row[1]!, row[2]!, null, null])),
    [5.5, "", 6.25, "", ""],
  ],
  [
    "in words",
    ["Ticket", "Trial", "Meter reading"],
    [
      ["101", "First", 5.5],
      ["101", "Second", 5.5],
      ["102", "First", 6],
      ["102", "Second", 6],
    ],
    [5.5, "", 6, ""],
  ],
  [
    "with a figure",
    ["Sample", "Which reading", "Reading"],
    [
      ["A", "Roll 1", 5.5],
      ["A", "Roll 2", 5.5],
      ["B", "Roll 1", 6],
      ["B", "Roll 2", 6],
    ],
    [5.5, "", 6, ""],
  ],
  [
    "in Spanish",
    ["Muestra", "Lectura N°", "Valor leído (%)"],
    [
      ["M1", 1, 5.5],
      ["M1", 2, 5.5],
      ["M2", 1, 6],
      ["M2", 2, 6],
    ],
    [5.5, "", 6, ""],
  ],
  [
    "one test with a single reading",
    HEADERS,
    [...LONG, ["S3", 1, 5, 2, 0]],
    [5.5, "", 6.25, "", "", "incomplete"],
  ],
  [
    "cups beside the reading for which they were added",
    HEADERS,
    [
      ["S1", 1, 5.5, 2, null],
      ["S1", 2, 5.5, null, 2],
      ["S2", 1, 6, 2, 0],
      ["S2", 2, 6, 2, 0],
    ],
    [7.5, "", 6, ""],
  ],
  [
    "blank rows between",
    HEADERS,
    LONG.flatMap((row) => [row, HEADERS.map(() => null)]),
    [5.5, "", "", "", 6.25, "", "", "", "", ""],
  ],
  [
    "sorted by the number of the reading",
    HEADERS,
    [...LONG].sort((a, b) => Number(a[1]) - Number(b[1])),
    [5.5, 6.25, "", "", ""],
  ],
  ["the other way round", HEADERS, [...LONG].reverse(), ["", "", 6.25, "", 5.5]],
  [
    "cups that differ are asked about, not chosen",
    HEADERS,
    [
      ["S1", 1, 5.5, 2, 0],
      ["S1", 2, 5.5, 2, 1],
      ["S2", 1, 6, 2, 0],
      ["S2", 2, 6, 2, 0],
    ],
    ["incomplete", "", 6, ""],
  ],
  [
    "four readings are more than a test has",
    HEADERS,
    [
      ["S1", 1, 5, 2, 0],
      ["S1", 2, 5.5, 2, 0],
      ["S1", 3, 6, 2, 0],
      ["S1", 4, 6.5, 2, 0],
    ],
    ["incomplete", "", "", ""],
  ],
];

test.each(TOGETHER)("%s: the readings of a test are put together", (_, headers, rows, said) => {
  expect(airs(headers, rows)).toEqual(said);
  const { findings } = checked(headers, rows);
  expect(findings.filter(({ rule }) => rule === "readings-in-rows")).toHaveLength(1);
});

/** Sheets in which every row is a test, however it is counted. */
const APART: readonly (readonly [name: string, headers: readonly string[], rows: Rows])[] = [
  [
    "two tests of a load",
    ["Load", "Test", "Reading"],
    [
      [14, 1, 5.5],
      [14, 2, 5.75],
      [15, 1, 6],
      [15, 2, 6],
    ],
  ],
  [
    "tests of a day",
    ["Date", "Trial", "Reading"],
    [
      ["2026-05-13", 1, 5.5],
      ["2026-05-13", 2, 5.75],
      ["2026-05-14", 1, 6],
      ["2026-05-14", 2, 6],
    ],
  ],
  [
    "names that change",
    ["Sample", "Roll", "Reading"],
    [
      ["A", 1, 5.5],
      ["B", 2, 5.75],
      ["C", 1, 6],
      ["D", 2, 6],
    ],
  ],
  [
    "two meters on one sample",
    ["Sample", "Meter", "Reading"],
    [
      ["A", "M-1", 5.5],
      ["A", "M-2", 5.75],
      ["B", "M-1", 6],
      ["B", "M-2", 6],
    ],
  ],
  [
    "two samples of a load",
    ["Load", "Sample", "Reading"],
    [
      [14, "1st", 5.5],
      [14, "2nd", 5.75],
      [15, "1st", 6],
      [15, "2nd", 6],
    ],
  ],
  [
    "no names",
    ["Sample", "Roll", "Reading"],
    [
      [null, 1, 5.5],
      [null, 2, 5.75],
      [null, 1, 6],
      [null, 2, 6],
    ],
  ],
  [
    "two columns of readings",
    ["Sample", "Roll", "Reading 1", "Reading 2"],
    [
      ["A", 1, 5.5, 5.5],
      ["A", 2, 5.75, 5.75],
      ["B", 1, 6, 6],
      ["B", 2, 6, 6],
    ],
  ],
];

test.each(APART)("%s: every row stays a test", (_, headers, rows) => {
  const { results, reading } = checked(headers, rows);
  expect(reading.together).toBeUndefined();
  expect(results.map(({ state }) => state)).not.toContain("");
});

test("what the user calls none of ours is not used to put rows together", () => {
  const kept = [{ header: "Roll", field: "not ours" } as const];
  const { results, reading } = checked(HEADERS, LONG, { kept });
  expect(reading.together).toBeUndefined();
  expect(results.map(({ state }) => state)).not.toContain("");
});

test("sorted, with a sample that was tested twice, it is asked which rows are one test", () => {
  const rows = [...LONG, ...LONG.slice(0, 2)].sort((a, b) => Number(a[1]) - Number(b[1]));
  const { results, findings } = checked(HEADERS, rows);
  expect(new Set(results.map(({ state }) => state))).toEqual(new Set(["incomplete"]));
  expect(findings.map(({ rule }) => rule)).toContain("rows-of-readings");
});

test.each([
  ["Roll (min)", [1, 1, 2, 1]],
  ["Roll time (min)", [1, 2, 1, 2]],
  ["Roll", [1, 1, 2, 1]],
  ["Readings taken", [1, 2, 2, 1]],
])("“%s” over %j beside names that stand once counts no readings", (header, cells) => {
  const rows = cells.map((cell, at) => [`S-${at}`, cell, 5.5, 5.5]);
  const { results, reading } = checked(["Sample", header, "First reading", "Second reading"], rows);
  expect(reading.together).toBeUndefined();
  expect(results.map(({ state }) => state)).not.toContain("incomplete");
  const one = checked(
    ["Sample", header, "Reading"],
    rows.map((row) => row.slice(0, 3)),
  );
  expect(one.findings.map(({ rule }) => rule)).not.toContain("rows-of-readings");
});

test.each([
  [
    "a further reading without a name",
    [
      ["A", 1],
      ["B", 1],
      ["A", 2],
      [null, 2],
    ],
  ],
  [
    "a name that lacks its first reading",
    [
      ["A", 1],
      ["B", 1],
      ["A", 2],
      ["C", 2],
    ],
  ],
  [
    "a name that has a reading twice",
    [
      ["A", 1],
      ["B", 1],
      ["B", 1],
      ["A", 2],
    ],
  ],
])("%s in a sorted sheet leaves open which rows are one test", (_, cells) => {
  const rows = cells.map(([name, order]) => [name!, order!, 5.5]);
  const { results, findings } = checked(["Sample", "Roll", "Reading"], rows);
  expect(new Set(results.map(({ state }) => state))).toEqual(new Set(["incomplete"]));
  expect(findings.map(({ rule }) => rule)).toContain("rows-of-readings");
});

test("a trial may be a reading or a test, and is asked about", () => {
  const headers = HEADERS.map((header) => (header === "Roll" ? "Trial" : header));
  const { results, findings } = checked(headers, LONG);
  expect(new Set(results.map(({ state }) => state))).toEqual(new Set(["incomplete"]));
  expect(findings.map(({ rule }) => rule)).toContain("rows-may-be-readings");
  const kept = [{ header: "Trial", field: "not ours" } as const];
  expect(checked(headers, LONG, { kept }).results.map(({ state }) => state)).not.toContain(
    "incomplete",
  );
});

test("a value leads to its own cell, and a further row to its test", () => {
  const { reading } = checked(HEADERS, LONG);
  expect(reading.placeOf(2, "first")).toEqual({ row: 3, column: 2 });
  expect(reading.placeOf(2, "second")).toEqual({ row: 4, column: 2 });
  expect(reading.placeOf(2, "third")).toEqual({ row: 5, column: 2 });
  expect(reading.placeOf(null, "third")).toEqual({ row: 0, column: 2 });
  expect([0, 1, 2, 3, 4, 5].map((row) => reading.together!.testOf(row))).toEqual([
    0, 0, 2, 2, 2, 5,
  ]);
  expect(reading.recognised.map(({ header }) => header)).toEqual(HEADERS);
});

test("a remark beside a further reading is the test's", () => {
  const rows = LONG.map((row, at) => [...row, at === 4 ? "void, leak" : null]);
  expect(airs([...HEADERS, "Remarks"], rows)).toEqual([5.5, "", "void", "", ""]);
});

test("below titles of two rows, too", () => {
  const block = [
    ["", "Meter", "", "", ""],
    ["Sample", "Roll", "Reading (%)", "Alcohol (pt)", "Cups"],
    ...LONG.map((row) => [...row]),
  ];
  const result = checkBlock(block);
  if (isIssue(result)) throw new Error(result.id);
  expect(result.results.map(({ air }) => air ?? "")).toEqual([5.5, "", 6.25, "", ""]);
});

test("each row of the sheet has its line, and the first says what was done", () => {
  const lines = checkedRows(checked(HEADERS, LONG));
  expect(lines).toHaveLength(LONG.length);
  expect(lines[0]![3]).toMatch(/counts the readings of a test/);
  expect(lines[1]).toEqual(["", "", "", ""]);
});

test("a sheet with a row for each reading says the same as one with a row for each test", () => {
  const reading = fc.integer({ min: 8, max: 32 }).map((quarters) => quarters / 4);
  const one = fc.record({
    readings: fc.array(reading, { minLength: 2, maxLength: 3 }),
    alcohol: fc.constantFrom(1, 2, 3, 4),
    cups: fc.integer({ min: 0, max: 2 }),
  });
  fc.assert(
    fc.property(fc.array(one, { minLength: 1, maxLength: 8 }), (tests) => {
      const wide = tests.map(({ readings: [a, b, c], alcohol, cups }, i) => {
        return [`S${i}`, a!, b!, c ?? null, alcohol, cups];
      });
      const long = tests.flatMap(({ readings, alcohol, cups }, i) =>
        readings.map((value, k) => [`S${i}`, k + 1, value, alcohol, cups]),
      );
      const wideHeaders = ["Sample", "Reading 1", "Reading 2", "Reading 3", "Alcohol (pt)", "Cups"];
      const inRows = checked(HEADERS, long).results.filter(({ state }) => state !== "");
      const inColumns = checked(wideHeaders, wide).results;
      expect(inRows.map(({ state, air }) => [state, air])).toEqual(
        inColumns.map(({ state, air }) => [state, air]),
      );
    }),
  );
});
