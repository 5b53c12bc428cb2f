import { readFileSync } from "node:fs";
import { declaredFunctions } from "../../scripts/functions-record";

// The rules: "Custom functions naming and localization", learn.microsoft.com.

function namesIn(file: string): Set<string> {
  const text = readFileSync(`tests/functions/${file}`, "utf8").replace(/^#.*$/gm, "");
  return new Set(text.split(/\s+/).filter((name) => name !== ""));
}

const worksheet = namesIn("excel-worksheet-functions.txt");
const macro = namesIn("excel-macro-functions.txt");

/** Last cell of a sheet: column XFD, row 1,048,576 (Excel specifications and limits, published). */
const LAST = { column: 16_384, row: 1_048_576 };

function isCellAddress(name: string): boolean {
  const a1 = /^([A-Z]{1,3})([1-9]\d*)$/.exec(name);
  if (a1) {
    const column = [...a1[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
    return column <= LAST.column && Number(a1[2]) <= LAST.row;
  }
  // In the other notation a row, a column or both may be named, and "R" alone is this row.
  return /^(R\d*)?(C\d*)?$/.test(name) && name !== "";
}

let names: string[];
beforeAll(async () => {
  const declared = await declaredFunctions();
  names = [...new Set(declared.flatMap(({ id, name }) => [id, name]))].map((name) =>
    name.toUpperCase(),
  );
});

describe("no function name or id", () => {
  test("is a cell address", () => {
    expect(names.filter(isCellAddress)).toEqual([]);
  });

  test("is a built-in worksheet function", () => {
    expect(names.filter((name) => worksheet.has(name))).toEqual([]);
  });

  test("is an old macro function", () => {
    expect(names.filter((name) => macro.has(name))).toEqual([]);
  });

  test("is shorter than 3 characters or has others than letters, digits and full stops", () => {
    expect(names.filter((name) => !/^[A-Z][A-Z\d.]{2,}$/.test(name))).toEqual([]);
  });
});

test("names are unique, also when . and _ are taken as equal", async () => {
  const stored = (await declaredFunctions()).map(({ name }) => name.replaceAll(".", "_"));
  expect(stored.filter((name, i) => stored.indexOf(name) !== i)).toEqual([]);
});

describe("what the names are compared with", () => {
  test.each(["A1", "AIR25", "XFD1048576", "R1C1", "R", "C", "RC", "R5", "C12"])(
    "%s is a cell address",
    (name) => expect(isCellAddress(name)).toBe(true),
  );

  test.each(["AIR", "XFE1", "A0", "A1048577", "CHECK", "ROUND.STEP", "AIR.C231"])(
    "%s is not a cell address",
    (name) => expect(isCellAddress(name)).toBe(false),
  );

  // Excel 2007 knew about 350 worksheet functions ([MS-XLS], Ftab), and more came with each version.
  test("the lists are whole enough to be worth a look", () => {
    expect(worksheet.size).toBeGreaterThan(450);
    expect(macro.size).toBeGreaterThan(400);
    for (const name of ["SUM", "XLOOKUP", "YIELD", "T.TEST"]) expect(worksheet).toContain(name);
    for (const name of ["GET.CELL", "STEP", "RESULT", "GOAL.SEEK"]) expect(macro).toContain(name);
  });
});
