/*
 * What each function makes of each kind of cell, in each argument: the same everywhere (our own rule).
 *
 * | cell                  | what comes out                                                          |
 * |-----------------------|-------------------------------------------------------------------------|
 * | blank                 | needed: a sentence that asks for it, or a blank where nothing at all is  |
 * |                       | measured; else what leaving it out gives                                 |
 * | 0                     | 0, never taken for a blank                                               |
 * | an error              | #VALUE!, the sentence names the argument and the error                   |
 * | text that cannot be   | #VALUE!, the sentence names the text                                     |
 * | TRUE for a number     | #VALUE!                                                                  |
 * | a formatted number, a date | as the plain number                                                 |
 * | an entity             | as the error that it stands for                                          |
 *
 * The rows give each function arguments that work; a new function needs one row more.
 */
import { shown } from "./custom-functions-runtime";
import * as strength from "../../src/functions/strength";
import record from "./functions-record.json";
import { WORKING_CALLS, type Given, type WorkingCall } from "./working-calls";

/** Arguments that must stand in the call but whose blank means "none", by the function's own help. */
const BLANK_IS_NONE = ["low", "high", "unit", "series", "freeMoisture", "addedWater"];

const declared = new Map(record.map(({ id, parameters }) => [id, parameters]));
const column = (given: Given) =>
  (typeof given === "object" ? given : [given]).map((value) => [value]);
/** What the function shows when the first cell of one argument is replaced. */
function withCell([, run, ...given]: WorkingCall, position: number, cell: unknown): unknown {
  const columns = given.map(column) as unknown[][][];
  if (position >= 0) columns[position]![0] = [cell];
  const across = run === strength.strengthWithinTest; // a pair of companions stands side by side
  return shown(() => run(...(across ? columns.map((values) => [values.flat()]) : columns)));
}
const said = (cell: unknown) => (typeof cell === "string" ? cell : JSON.stringify(cell));

const ARGUMENTS = WORKING_CALLS.flatMap((row) =>
  row.slice(2).map((given, i) => ({
    id: row[0],
    name: declared.get(row[0])![i]!.split(/[?:]/)[0]!,
    needed: !declared.get(row[0])![i]!.includes("?"),
    row,
    position: i,
    given: given as Given,
  })),
);
const NUMBERS = ARGUMENTS.filter(({ given }) => typeof given !== "string");

test("every function with single arguments or a series has its row", () => {
  // They read whole tables; each has tests of its own for what it cannot read.
  const tables = [
    "CHECK",
    "FINDINGS",
    "SUMMARY",
    "BIAS",
    "REGISTER.STATE",
    "TESTS.DUE",
    "BLANK.TEST",
  ];
  expect(WORKING_CALLS.map(([id]) => id).sort()).toEqual(
    record.map(({ id }) => id).filter((id) => !tables.includes(id)),
  );
});

test.each(WORKING_CALLS.map((row) => ({ id: row[0], row })))(
  "FRESH.$id works with the arguments of its row",
  ({ row }) => {
    expect(said(withCell(row, -1, null))).not.toMatch(/#VALUE!|#N\/A|"#/);
  },
);

describe.each(ARGUMENTS)("FRESH.$id, $name", ({ row, position, needed, given, name }) => {
  test("an error is passed on by name", () => {
    const cell = said(withCell(row, position, { code: "#REF!" }));
    if (typeof given === "object" && !cell.startsWith("#")) expect(cell).toContain("#VALUE!");
    else expect(cell).toMatch(/^#VALUE! .*#REF!/);
  });

  test("an entity is the error that it stands for", () => {
    const entity = { type: "Entity", text: "a load", basicType: "Error", basicValue: "#BUSY!" };
    expect(said(withCell(row, position, entity))).toContain(
      typeof given === "object" ? "#" : "#BUSY!",
    );
  });

  test("text that cannot be is shown in the sentence", () => {
    const cell = said(withCell(row, position, "abc"));
    if (typeof given === "object" && !cell.startsWith("#")) expect(cell).toContain("#VALUE!");
    else expect(cell).toMatch(/^#VALUE! .*abc/);
  });

  test("a blank is asked for, or stands for nothing given", () => {
    if (typeof given === "object")
      return expect(said(withCell(row, position, null))).not.toContain("abc");
    const cell = said(withCell(row, position, null));
    const asks = needed && !BLANK_IS_NONE.includes(name);
    if (asks)
      expect(cell).toMatch(
        /^#VALUE! .*nothing is given|^#N\/A A second reading|^$|^\[\["",""\]\]$/,
      );
    else expect(cell).not.toMatch(/nothing is given/);
  });
});

describe.each(NUMBERS)("FRESH.$id, $name", ({ row, position, given }) => {
  const plain = typeof given === "object" ? given[0]! : given;

  test("0 is never taken for a blank", () => {
    expect(said(withCell(row, position, 0))).not.toMatch(/nothing is given|^$/);
  });

  test("TRUE is not a number", () => {
    expect(said(withCell(row, position, true))).toContain("#VALUE!");
  });

  test("a formatted number is its plain number", () => {
    const formatted = { type: "FormattedNumber", basicValue: plain, numberFormat: "0.00" };
    expect(withCell(row, position, formatted)).toEqual(withCell(row, -1, null));
  });
});
