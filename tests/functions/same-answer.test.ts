import fc, { type Arbitrary } from "fast-check";
import "./custom-functions-runtime";
import { check } from "../../src/functions/field-sheet";
import { air, readingFinal } from "../../src/functions/volumetric-air";
import { isBlank, type CellValue } from "../../src/measure/cell-value";
import { checkAreaInSteps } from "../../src/pane/state/checked-area";

const HEADERS = ["First reading", "Second reading", "Third reading", "Cups", "Alcohol (oz)"];
const SOUND: CellValue[] = [6, 6, null, 0, 16];

const cellOf = (...parts: (readonly [weight: number, cells: Arbitrary<CellValue>])[]) =>
  fc.oneof(...parts.map(([weight, arbitrary]) => ({ weight, arbitrary })));
const oneOf = (...cells: CellValue[]) => fc.constantFrom(...cells);
const quarters = (from: number, to: number): Arbitrary<number> =>
  fc.integer({ min: from, max: to }).map((count) => count / 4);

const blank = oneOf(null, "", "-", "n/a");
// Not "5,25": a sheet may show that its decimals have commas, a single cell cannot.
const bad = oneOf("about 6", 5.3, -1, 9.25, 0.055, true, { error: "#N/A" });
const written = quarters(0, 36).chain((value) => oneOf(`${value}`, ` ${value} %`));
const reading = cellOf([12, quarters(0, 36)], [2, written], [2, blank], [1, bad]);
const cups = cellOf(
  [6, fc.nat(3)],
  [2, blank],
  [2, oneOf(0.5, -1, "two", "1", { error: "#REF!" })],
);
const withUnit = oneOf("48 oz", "1.4 L", "500 mL", "2 1/2 pt", "1 gal", "some");
const alcohol = cellOf([6, fc.nat(88)], [3, withUnit], [1, blank]);

/** Readings as they follow each other in a test: most lie within a division. */
const taken = fc
  .tuple(quarters(4, 32), quarters(-2, 3), quarters(-2, 2), fc.boolean())
  .map(([first, step, last, two]) => [first, first + step, two ? null : first + step + last]);
const row = fc
  .tuple(fc.oneof(taken, fc.tuple(reading, reading, reading)), cups, alcohol)
  .map(([readings, ...rest]): CellValue[] => [...readings, ...rest]);

/** What the cells of one column hold: values, and for an error its sentence. */
const column = (cells: unknown[][], at = 0) =>
  cells.map((cell) => (cell[at] instanceof Error ? cell[at].message : cell[at]));

/** State and air of each row, as the functions for the single steps give them. */
function byFunctions(rows: CellValue[][]) {
  const given = (at: number) => rows.map((cells) => [cells[at]!]);
  const finals = readingFinal(given(0), given(1), given(2));
  const results = column(air(finals, given(3), given(4), [["oz"]]));
  return column(finals).map((final, i) => {
    if (rows[i]!.every(isBlank)) return ["", ""];
    if (String(final).startsWith("The test is void")) return ["void", ""];
    const result = results[i];
    return typeof result === "number" ? ["valid", result] : ["incomplete", ""];
  });
}

function byCheck(rows: CellValue[][]) {
  const cells = check([HEADERS], rows);
  return rows.map((_, i) => [column(cells, 0)[i], column(cells, 1)[i]]);
}

function byPane(rows: CellValue[][]) {
  const size = { rows: rows.length + 1, columns: HEADERS.length };
  const area = { sheetId: "1", sheetName: "Loads", row: 0, column: 0, ...size };
  const read = { area, address: "Loads!A1", values: [HEADERS, ...rows] };
  const steps = checkAreaInSteps(read, { low: "", high: "", decimal: "." });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value.result.results.map(({ state, air = "" }) => [state, air]);
}

test("a row gets the same answer from single functions, from FRESH.CHECK and in the pane", () => {
  const states = new Set<unknown>();
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), (rows) => {
      const table = [SOUND, ...rows];
      const answers = byFunctions(table);
      // That the answers are right, the tests of each way hold against values from outside.
      expect(byCheck(table)).toEqual(answers);
      expect(byPane(table)).toEqual(answers);
      answers.forEach(([state]) => states.add(state));
    }),
    { seed: 173, numRuns: 1000 },
  );
  expect(states).toEqual(new Set(["valid", "void", "incomplete"]));
});
