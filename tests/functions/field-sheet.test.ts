import { shown } from "./custom-functions-runtime";
import { check, findings } from "../../src/functions/field-sheet";

const headers = [["Sample", "First reading", "Second reading", "Alcohol (oz)", "Foam"]];
const rows = [
  ["A-1", 6, 6.25, 48, 1],
  ["A-2", 6, 6, 0, 2.25],
  [null, null, null, null, null],
  ["A-3", "six", 6, 0, 1],
  ["A-4", 8, 8, 80, 1],
];
const SOURCE = "derived: 6.25 − 0.30 = 5.95 → 6.00 and 8.00 − 0.90 = 7.10 → 7.00";

test(`FRESH.CHECK gives four cells for each row (${SOURCE})`, () => {
  const cells = shown(() => check(headers, rows, [[4.5]], [[6.5]])) as unknown[][];
  expect(cells.map((row) => row.slice(0, 3))).toEqual([
    ["valid", 6, "within"],
    ["void", "", ""],
    ["", "", ""],
    ["incomplete", "", ""],
    ["valid", 7, "above"],
  ]);
  expect(cells[0]![3]).toBe("");
  expect(cells[1]![3]).toMatch(/^Foam: 2.25 divisions of foam/);
  expect(cells[2]![3]).toBe("");
  expect(cells[3]![3]).toMatch(/“six” is not a number/);
});

test("FRESH.FINDINGS lists every finding by the row's own id", () => {
  const list = shown(() => findings(headers, rows, [[4.5]], [[6.5]])) as unknown[][];
  expect(list[0]).toEqual([
    "row",
    "sample",
    "rule",
    "weight",
    "column",
    "value",
    "message",
    "cause",
  ]);
  const lines = list.slice(1).map((line) => line.slice(0, 6));
  expect(lines).toContainEqual([2, "A-2", "foam-over-limit", "void", "Foam", 2.25]);
  expect(lines).toContainEqual([4, "A-3", "not-a-number", "error", "First reading", "six"]);
  expect(lines.some(([row, , rule]) => row === 5 && rule === "outside-specification")).toBe(true);
});

test("with nothing found, one line says so", () => {
  const list = shown(() => findings(headers, [["A-1", 6, 6, 16, 0]])) as unknown[][];
  expect(list).toHaveLength(3);
  expect(list[2]![2]).toBe("not-looked-at");
  expect(list[1]![6]).toBe("Nothing was found. Rows checked: 1.");
});

test("headers may stand in two rows", () => {
  const two = [
    ["Sample", "Readings", "", "Alcohol", "Foam"],
    ["", "First", "Second", "oz", ""],
  ];
  const inTwo = shown(() => check(two, rows)) as unknown[][];
  const inOne = shown(() => check(headers, rows)) as unknown[][];
  expect(inTwo.map((row) => row.slice(0, 3))).toEqual(inOne.map((row) => row.slice(0, 3)));
  expect(inTwo[3]![3]).toMatch(/^Readings First: “six” is not a number/);
});

test("limits may be a column, one for each row", () => {
  const high = [[6.5], [null], [null], [null], [7.5]];
  const cells = shown(() => check(headers, rows, undefined, high)) as unknown[][];
  expect(cells.map((row) => row[2])).toEqual(["within", "", "", "", "within"]);
});

test.each([
  [[["Sample", "Remark"]], [["A", "b"]], /^#VALUE! No column of meter readings was recognised/],
  [[["Sample", "Reading"]], [["A", 5, 6]], /^#VALUE! The headers are 2 cells wide and the rows 3/],
  [[[null, null]], [["A", 5]], /^#VALUE! No header row was found/],
])("headers %j with rows %j are refused", (heads, body, sentence) => {
  expect(shown(() => check(heads, body))).toMatch(sentence);
});

test("limits of another length are refused, and named", () => {
  expect(shown(() => check(headers, rows, [[1], [2]]))).toMatch(
    /^#VALUE! Low: the limits given \(2\) are not as many as the rows \(5\)/,
  );
});

test("a sheet without alcohol, or with one reading a test, says so once", () => {
  const list = shown(() =>
    findings(
      [["Sample", "Reading"]],
      [
        ["A", 6],
        ["B", 6.25],
      ],
    ),
  ) as unknown[][];
  expect(list.slice(1).map((line) => [line[0], line[2], line[3]])).toEqual([
    ["sheet", "alcohol-not-in-sheet", "doubt"],
    ["sheet", "agreement-not-recorded", "doubt"],
    ["", "not-looked-at", "note"],
  ]);
});

describe("a setup", () => {
  const heads = [["Sample", "Mix", "Dial one", "Dial two", "Spirit"]];
  const tests = [
    ["A-1", "LW-4", 6, 6.25, 48],
    ["A-2", "lw-4 ", 8, 8, 80],
    ["A-3", "LW-9", 6, 6, 0],
  ];
  const setup = [
    ["Header", "Taken for", "Unit"],
    ["Dial one", "first reading", ""],
    ["dial  two", "second reading", ""],
    ["Spirit", "alcohol", "oz"],
    ["", "", ""],
    ["Mix", "Target", "Tolerance"],
    ["LW-4", 6, "±0.5"],
  ];
  const said = (given: unknown[][], rows = tests, low?: unknown[][], headed = heads) =>
    (shown(() => findings(headed, rows, low as any[][], undefined, given)) as unknown[][])
      .filter(([, , rule]) => rule === "setup-not-applied")
      .map((line) => line[6]);

  test(`says what columns are and what is specified for a mix (${SOURCE})`, () => {
    const cells = shown(() => check(heads, tests, undefined, undefined, setup)) as unknown[][];
    expect(cells.map((row) => row.slice(0, 3))).toEqual([
      ["valid", 6, "within"],
      ["valid", 7, "above"],
      ["valid", 6, ""],
    ]);
    expect(said(setup)).toEqual([
      expect.stringMatching(/^The setup gives no air limits for mix “LW-9”/),
    ]);
  });

  test("yields to limits that are given, and to those of the sheet", () => {
    const given = shown(() => check(heads, tests, [[4]], [[8]], setup)) as unknown[][];
    expect(given.map((row) => row[2])).toEqual(["within", "within", "within"]);
    const own = [[...heads[0]!, "Low limit", "High limit"]];
    const rows = tests.map((row) => [...row, 6.5, 9]);
    const inSheet = shown(() => check(own, rows, undefined, undefined, setup)) as unknown[][];
    expect(inSheet.map((row) => row[2])).toEqual(["below", "within", "below"]);
  });

  test("is not put in the place of limits of the sheet that cannot be read", () => {
    const own = [[...heads[0]!, "Low limit"]];
    const rows = tests.map((row) => [...row, "four"]);
    const cells = shown(() => check(own, rows, undefined, undefined, setup)) as unknown[][];
    expect(cells.map((row) => row[2])).toEqual(["", "", ""]);
  });

  test.each([
    [
      "no such header",
      [...setup.slice(0, 4), ["Foam 2", "foam", ""]],
      /“Foam 2”: nothing that is read/,
    ],
    ["no such field", [...setup.slice(0, 4), ["Sample", "wobbling", ""]], /line 5: “wobbling”/],
  ])("%s is said, and the rest applied", (_, given, sentence) => {
    expect(said(given)).toEqual([expect.stringMatching(sentence)]);
    const cells = shown(() => check(heads, tests, undefined, undefined, given)) as unknown[][];
    expect(cells.map((row) => row[1])).toEqual([6, 7, 6]);
    expect(cells[0]![3]).toMatch(sentence);
  });

  test("a header that several columns have is not settled by it", () => {
    const twice = [["Sample", "First reading", "Second reading", "Extra", "Extra"]];
    const given = [setup[0]!, ["Extra", "alcohol", "oz"]];
    expect(said(given, [["A", 6, 6, 16, 8]], undefined, twice)).toEqual([
      "The setup was not applied to “Extra”: several columns of this sheet are headed so. Give each its own header.",
    ]);
  });

  test("specifications by mix need a column of mixes", () => {
    const given = [
      ["Mix", "Low"],
      ["A", 4],
    ];
    const without = [["Sample", "First reading", "Second reading"]];
    expect(said(given, [["A", 6, 6]], undefined, without)).toEqual([
      expect.stringMatching(/no column of this sheet is read as the mix/),
    ]);
    expect(said(given, [["A", 6, 6]], [[4]], without)).toEqual([]);
  });
});
