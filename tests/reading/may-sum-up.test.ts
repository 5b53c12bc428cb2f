import "../functions/custom-functions-runtime";
import { check } from "../../src/functions/field-sheet";

/*
 * A last row that nobody has named, of the sums or means of the rows above (worked by hand), is neither a
 * test nor left out: it is said. Totals without a label are common practice.
 */
const HEADERS = [["Sample", "First reading", "Second reading", "Alcohol (oz)"]];
const TESTS = [
  ["S-1", 5, 5, 16],
  ["S-2", 6, 6.25, 16],
  ["S-3", 6.5, 6.5, 16],
];
const lastOf = (rows: unknown[][]) => check(HEADERS, rows).at(-1)!;

test.each([
  ["means", [null, 5.8333, 5.9167, 16]],
  ["means with one figure", [null, 5.8, 5.9, 16]],
  ["sums", [null, 17.5, 17.75, 48]],
  ["of some columns", [null, 5.83, 5.92, null]],
])("a last row of %s without a name is said, and no test", (_, row) => {
  const [state, air, , said] = lastOf([...TESTS, row]);
  expect([state, air]).toEqual(["incomplete", ""]);
  expect(said).toMatch(/nothing in the row names a test.*Total/);
});

test.each([
  ["a test whose name was forgotten", [...TESTS, [null, 6, 6.25, 16]]],
  ["a test that has a name", [...TESTS, ["S-4", 5.8, 5.9, 16]]],
  ["rows of which another has no name either", [...TESTS, [null, 6, 6, 8], [null, 5.88, 5.94, 14]]],
  [
    "a row below one test only",
    [
      ["S-1", 6, 6, 16],
      [null, 6, 6, 16],
    ],
  ],
])("%s is a test as ever", (_, rows) => {
  expect(lastOf(rows)[0]).toBe("valid");
});

test("a sheet that names no tests has no such row", () => {
  const rows = [6, 6, 6].map((reading) => [reading, reading, 16]);
  expect(check([HEADERS[0]!.slice(1)], rows).map(([state]) => state)).toEqual(
    Array(3).fill("valid"),
  );
});
