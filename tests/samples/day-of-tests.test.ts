import { readFileSync } from "node:fs";
import { COLUMNS, ROWS } from "../../scripts/samples/day-of-tests";
import { dayOfTestsSheets } from "../../scripts/samples/day-of-tests-sheets";
import { sampleFiles } from "../../scripts/samples/sample-files";
import { addressOf } from "../../scripts/samples/sheet";
import { storedFormula } from "../../scripts/write-workbook";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { checkedTable } from "../fieldsheet/checked";

const committed = (name: string) => readFileSync(`samples/${name}`);

describe("what each row is meant to show", () => {
  // Worked by hand from the method: air = final reading − correction + cups, to the nearest 0.25.
  // Corrections: ASTM C173 Table 1 as reproduced in a meter maker's manual (2019); 56 oz lies half-way
  // between 48 and 64 oz, so 0.45 (derived).
  test.each<
    [row: number, sample: string, test: string, air: number | "", rule: string, why: string]
  >([
    [1, "S-01", "valid", 5.75, "", "5.50 and 5.75 agree; 5.75"],
    [2, "S-02", "valid", 6, "", "6.00"],
    [3, "S-03", "valid", 6.5, "", "32 oz: nothing to subtract"],
    [4, "S-04", "valid", 6.25, "", "6.50 − 0.30 = 6.20"],
    [5, "S-05", "valid", 6.25, "", "third reading agrees with the second"],
    [6, "S-06", "valid", 6, "reported-air-wrong", "6.50 − 0.60 = 5.90; correction forgotten"],
    [7, "S-07", "void", "", "foam-over-limit", "3 divisions of foam, 2 allowed"],
    [8, "S-07", "valid", 6, "", "6.25 − 0.30 = 5.95"],
    [9, "S-08", "valid", 7, "", "7.00"],
    [10, "S-09", "valid", 7.5, "", "at the high limit of 7.5"],
    [11, "S-10", "valid", 7.75, "outside-specification", "above 7.5"],
    [12, "S-10C", "valid", 7.5, "", "check test at the high limit"],
    [13, "S-11", "valid", 9.25, "reported-air-wrong", "8.50 − 0.30 + 1 = 9.20; cup forgotten"],
    [14, "S-12", "valid", 10.5, "outside-specification", "8.50 + 2 = 10.50"],
    [15, "S-13", "valid", 6.25, "reported-air-wrong", "(5.50 + 6.25 + 6.25) ÷ 3 = 6.00; averaged"],
    [16, "S-14", "valid", 5.25, "reported-air-wrong", "5.75 − 0.45 = 5.30; rounded to 0.1"],
    [17, "S-15", "incomplete", "", "not-a-number", "a text in the first reading"],
    [18, "S-16", "incomplete", "", "alcohol-missing", "a blank is not a zero"],
    [19, "S-17", "void", "", "slow-to-settle", "7.5 minutes, 6 allowed"],
    [20, "S-17", "valid", 6.25, "", "6.75 − 0.60 = 6.15"],
    [21, "S-18", "void", "", "readings-disagree", "5.0, 5.5, 6.0"],
    [22, "S-19", "void", "", "packed-concrete-left", "concrete stuck in the bowl"],
    [23, "S-19", "valid", 6, "", "32 oz: nothing to subtract"],
    [24, "S-20", "valid", 4.5, "", "4.75 − 0.30 = 4.45; at the low limit of 4.5"],
    [25, "S-21", "valid", 4, "outside-specification", "4.50 − 0.45 = 4.05; below 4.5"],
    [26, "S-21C", "valid", 4.5, "", "5.00 − 0.45 = 4.55; check test at the low limit"],
    [27, "S-22", "incomplete", "", "second-reading-missing", "one reading only"],
    [28, "S-23", "incomplete", "", "third-reading-missing", "6.00 and 6.75 need a third"],
    [
      29,
      "S-24",
      "valid",
      6.25,
      "off-grid-reading",
      "6.1 is between two graduations; 6.25 agrees and is final",
    ],
    [30, "S-25", "valid", 7, "", "8.00 − 0.90 = 7.10"],
    [31, "S-26", "valid", 6.5, "reported-air-wrong", "6.25 reported; nothing due for 32 oz"],
    [32, "S-27", "valid", 5.25, "reported-air-wrong", "5.75 − 0.60 = 5.15; added instead, 6.35"],
    [33, "S-28", "valid", 6, "", "6.25 − 0.30 = 5.95"],
    [34, "", "", "", "", "a blank row"],
    [35, "S-29", "valid", 5.75, "", "5 1/2 and 5 3/4 agree"],
    [36, "S-30", "valid", 6, "", "1.4 L is the 3 pt row: 6.25 − 0.30 = 5.95"],
  ])("row %i, %s: %s %s %s (%s)", (row, sample, state, air, rule) => {
    const result = checked.results[row - 1]!;
    expect(result).toMatchObject({ sample, state });
    expect(result.air ?? "").toBe(air);
    const grave = result.findings.filter(({ weight }) => weight === "void" || weight === "error");
    if (rule === "") expect(grave).toEqual([]);
    else expect(result.findings.map((finding) => finding.rule)).toContain(rule);
  });

  const headers = COLUMNS.map(({ header }) => header);
  const checked = checkedTable({ headers, rows: ROWS });

  test("every row and every column is meant", () => {
    expect(checked.results).toHaveLength(36);
    expect(headers.length - Object.keys(checked.columns).length).toBe(2); // tester and remarks
  });
});

describe("the committed files", () => {
  const CHANGED = "are those that the script makes now; after a change run: npm run samples";
  const lines = (text: string) => text.split(/\r?\n/);

  test(`day-of-tests.csv: ${CHANGED}`, async () => {
    const made = (await sampleFiles())["day-of-tests.csv"] as string;
    expect(lines(committed("day-of-tests.csv").toString())).toEqual(lines(made));
  });

  test(`day-of-tests.xlsx: ${CHANGED}`, async () => {
    const made = (await sampleFiles())["day-of-tests.xlsx"] as Uint8Array;
    // Read back, because another version of the runtime may compress the same file otherwise.
    expect(await readWorkbook(committed("day-of-tests.xlsx"))).toEqual(await readWorkbook(made));
  });
});

describe("the workbook read back", () => {
  const sheets = dayOfTestsSheets();
  const [DATE, TIME] = ["Date", "Time"].map((name) =>
    COLUMNS.findIndex(({ header }) => header === name),
  );

  function shown(value: unknown, column: number): unknown {
    if (!(value instanceof Date)) return value ?? "";
    const toTheMinute = new Date(Math.round(value.getTime() / 60_000) * 60_000).toISOString();
    return column === DATE ? toTheMinute.slice(0, 10) : toTheMinute.slice(11, 16);
  }

  test("has every cell, formula and result", async () => {
    const read = (await readWorkbook(committed("day-of-tests.xlsx"))).sheets;
    expect(read.map(({ name }) => name)).toEqual(["Loads", "Check", "Read me"]);
    sheets.forEach(({ rows }, s) =>
      rows.forEach((row, r) =>
        row.forEach((cell, c) => {
          const { formula, formulaResult } = read[s]!.cells?.get(`${r},${c}`) ?? {};
          const value = formulaResult ?? read[s]!.rows[r]?.[c];
          const place = `${read[s]!.name}!${addressOf(r, c)}`;
          const written =
            s === 0 && r > 0 && (c === DATE || c === TIME)
              ? ROWS[r - 1]![c]
              : (cell?.error ?? cell?.v);
          expect([place, shown(value, c)]).toEqual([place, written ?? ""]);
          expect([place, formula]).toEqual([place, cell?.f && storedFormula(cell.f)]);
        }),
      ),
    );
  });

  test("has formulas that spread over their results", async () => {
    const [loads, check] = (await readWorkbook(committed("day-of-tests.xlsx"))).sheets;
    expect(loads!.cells!.get("1,23")).toMatchObject({
      formula: "_xldudf_FRESH_CHECK(A1:R1,A2:R37)",
      formulaRef: "X2:AA37",
      formulaDynamic: true,
    });
    const found = sheets[1]!.rows.length;
    expect(check!.cells!.get("2,0")!.formulaRef).toBe(`A3:H${found}`);
  });

  test.each([
    ["=FRESH.AIR(A1)", "_xldudf_FRESH_AIR(A1)"],
    ["=2*FRESH.READING.FINAL(A1,B1)", "2*_xldudf_FRESH_READING_FINAL(A1,B1)"],
    ["=SUM(A1:A2)", "SUM(A1:A2)"],
  ])("%s is stored as %s (how Excel stores functions of an add-in)", (typed, stored) => {
    expect(storedFormula(typed)).toBe(stored);
  });
});

test.each([
  [0, 0, "A1"],
  [1, 25, "Z2"],
  [0, 26, "AA1"],
  [9, 701, "ZZ10"],
  [0, 702, "AAA1"],
])("row %i, column %i is %s (the order of column names)", (row, column, address) => {
  expect(addressOf(row, column)).toBe(address);
});
