import fc from "fast-check";
import type { CheckResult } from "../../src/fieldsheet/check-result";
import type { TestResult } from "../../src/fieldsheet/test-result";
import { checkTable, checkTableInSteps } from "../../src/fieldsheet/check-table";
import type { CellValue } from "../../src/measure/cell-value";
import { Problem } from "../../src/measure/problem";
import type { SheetTable } from "../../src/reading/sheet-table";
import { sheetFor, type Cells } from "./rule-cases";
import { checkedTable } from "./checked";

function resultOf(record: Cells, options = {}): TestResult {
  return checkedTable(sheetFor(record), options).results[0]!;
}

describe("worked examples of the method: state and air", () => {
  test.each<[record: Cells, test: string, air: number | undefined, source: string]>([
    [
      { "First reading": 5.5, "Second reading": 5.75 },
      "valid",
      5.75,
      "a concrete field-technician study guide (2026)",
    ],
    [
      { "First reading": 5.5, "Second reading": 6.25, "Third reading": 6.25 },
      "valid",
      6.25,
      "a concrete field-technician study guide (2026)",
    ],
    [
      { "Second reading": 6.25, "Alcohol (oz)": "3 pt" },
      "valid",
      6,
      "derived from ASTM C173 Table 1: 6.25 - 0.3 = 5.95",
    ],
    [
      { "First reading": 7.5, "Second reading": 7.75, "Alcohol (oz)": 64 },
      "valid",
      7.25,
      "derived from ASTM C173 Table 1: 7.75 - 0.6 = 7.15",
    ],
    [
      { "First reading": 8, "Second reading": 8, "Alcohol (oz)": "5 pt" },
      "valid",
      7,
      "derived from ASTM C173 Table 1: 8 - 0.9 = 7.1",
    ],
    [
      { "First reading": 8.25, "Second reading": 8.5, "Alcohol (oz)": 32, Cups: 3 },
      "valid",
      11.5,
      "derived: 8.5 + 3 cups of 1.00 %",
    ],
    [
      { "First reading": 5, "Second reading": 5.5, "Third reading": 6 },
      "void",
      undefined,
      "derived from the rule of the third reading, common practice",
    ],
    [{ Foam: 2.25 }, "void", undefined, "over 2 divisions, a meter maker's manual (2019)"],
    [{ "Time to settle": 6.5 }, "void", undefined, "over 6 min, a meter maker's manual (2019)"],
    [{ "Second reading": null }, "incomplete", undefined, "a meter maker's manual (2019)"],
    [{ "First reading": 5, "Second reading": 6 }, "incomplete", undefined, "common practice"],
    [{ "Alcohol (oz)": null }, "incomplete", undefined, "common practice"],
    [{ "Time to settle": 0.3125 }, "incomplete", undefined, "it decides, and 7:30 was typed"],
    [{ Foam: "some" }, "incomplete", undefined, "it decides, and cannot be read"],
    [{ Leak: "some" }, "incomplete", undefined, "it decides, and cannot be read"],
    [
      { "Alcohol after zeroing": "some" },
      "incomplete",
      undefined,
      "it decides, and cannot be read",
    ],
    [{ "Second reading": null, Foam: 3 }, "void", undefined, "void goes before incomplete"],
    [{ Method: "C231" }, "incomplete", undefined, "no volumetric result"],
    [{ Date: "someday" }, "valid", 6, "a date decides nothing about the air"],
  ])("%j: %s %s (%s)", (record, state, air) => {
    expect(resultOf(record)).toMatchObject({ state, air });
  });
});

describe("the air against the specification", () => {
  test.each<[record: Cells, options: object, verdict: string | undefined]>([
    [{}, {}, undefined],
    [{}, { low: 6, high: 6 }, "within"],
    [{}, { low: 6.25 }, "below"],
    [{}, { high: 5.75 }, "above"],
    [{ Low: 5, High: 7 }, {}, "within"],
    [{ Low: 5, High: 7 }, { low: 6.25 }, "below"],
    [{ Target: 7, Tolerance: 1 }, {}, "within"],
    [{ Target: 7.5, Tolerance: "±1" }, {}, "below"],
    [{ Target: 7.5, Tolerance: null }, {}, undefined],
    [{}, { low: [6.25] }, "below"],
    [{}, { low: [null], high: [5] }, "above"],
    [{ Foam: 3 }, { low: 6.25 }, undefined],
    // Of limits that cross, or of which one cannot be read, nothing is within; what is outside the other is.
    [{ Low: 7, High: 5 }, {}, undefined],
    [{}, { low: 7, high: 5 }, undefined],
    [{ Low: "see plans", High: 7 }, {}, undefined],
    [{ Low: "see plans", High: 5 }, {}, "above"],
    [{ Low: 5, High: { error: "#REF!" } }, {}, undefined],
    [{ Low: 7, High: { error: "#REF!" } }, {}, "below"],
    [{ Low: "see plans", High: 7 }, { low: 5 }, "within"],
    [{ Target: "see plans", Low: 5, High: 7 }, {}, "within"],
    [{ Target: 6, Tolerance: "usual" }, {}, undefined],
    // Cells with a percentage format hold 4.5 % as 0.045.
    [{ Low: 0.045, High: 0.075 }, {}, undefined],
    [{ Target: 0.06, Tolerance: 0.015 }, {}, undefined],
    [{ Target: 6, Tolerance: 0.015 }, {}, undefined],
    [{ Low: 0, High: 7.5 }, {}, "within"],
  ])("%j with %j: %s", (record, options, verdict) => {
    expect(resultOf(record, options).specification).toBe(verdict);
  });

  test("a column of limits is taken row by row, and a bad one says so in its row only", () => {
    const sheet = sheetFor([{}, {}, {}]);
    const { results } = checkedTable(sheet, { low: [5, "x", 6.25] });
    expect(results.map(({ specification }) => specification)).toEqual([
      "within",
      undefined,
      "below",
    ]);
    expect(results.map(({ findings }) => findings.map(({ rule }) => rule))).toEqual([
      [],
      ["not-a-number"],
      expect.arrayContaining(["outside-specification"]),
    ]);
  });
});

describe("what concerns the whole table is the issue in place of a result", () => {
  const rows = [[6, 6]];
  test.each<[table: SheetTable, options: object, problem: string]>([
    [{ headers: ["First reading"], rows }, {}, "headers-and-rows-differ"],
    [{ headers: [null, ""], rows }, {}, "no-header-row"],
    [{ headers: ["Sample", "Cups"], rows }, {}, "no-readings-column"],
    [{ headers: ["First reading", "Second reading"], rows }, { low: [1, 2] }, "limits-do-not-fit"],
    [{ headers: ["First reading", "Second reading"], rows }, { low: ["x"] }, "not-a-number"],
    [{ headers: ["First reading", "Second reading"], rows }, { high: 0.075 }, "percent-as-share"],
    [
      { headers: ["First reading", "Second reading"], rows },
      { low: ["4.5%"], high: [0.075] },
      "percent-as-share",
    ],
  ])("%j with %j: %s", (table, options, problem) => {
    expect(checkTable(table, options)).toMatchObject({ id: problem });
  });
});

/** Cells as they come: sound, blank, wrong, unreadable. */
const anyCell: fc.Arbitrary<CellValue> = fc.oneof(
  fc.constantFrom<CellValue[]>(null, "", "-", "n/a", 0, 3, 5, 5.25, 5.5, 6, 6.1, 12, -1, 2, 48),
  fc.constantFrom<CellValue[]>(
    "48 oz",
    "1.4 L",
    "yes",
    "no",
    "C231",
    "about 6",
    "5,25",
    "2026-06-09",
  ),
  fc.constantFrom<CellValue[]>(true, false, { error: "#N/A" }, { error: "#REF!" }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string({ maxLength: 8 }),
);
const HEADERS = [
  "Sample",
  "First reading",
  "Second reading",
  "Third reading",
  "Final reading",
  "Cups",
  "Alcohol (oz)",
  "Foam",
  "Time to settle",
  "Packed concrete",
  "Leak",
  "Reported air",
  "Low",
  "High",
  "Method",
  "Aggregate",
  "Date",
  "Test start",
];
/** All that a check says. */
const said = ({ results, findings }: CheckResult) => [
  results.map(({ state, air, specification, findings: own }) => [state, air, specification, own]),
  findings,
];

const anyRow = fc.tuple(...HEADERS.map(() => anyCell));
const anyRows = fc.array(anyRow, { minLength: 1, maxLength: 6 });
const runs = { numRuns: 300 };

describe("whatever stands in the cells", () => {
  test("a state, an air content and findings stand for each row", () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const result = checkedTable({ headers: HEADERS, rows });
        expect(result.results).toHaveLength(rows.length);
        for (const { state, air, specification, findings, blank } of result.results) {
          expect(["valid", "void", "incomplete", ""]).toContain(state);
          expect(state === "").toBe(blank);
          // A void or an incomplete test has no air; a valid one always has.
          expect(air !== undefined).toBe(state === "valid");
          if (air === undefined) expect(specification).toBeUndefined();
          if (air !== undefined) expect(Number.isInteger(air * 4) && air >= 0).toBe(true);
          expect(findings.some(({ weight }) => weight === "void")).toBe(state === "void");
          if (state === "incomplete") expect(findings.length).toBeGreaterThan(0);
          if (state === "") expect(findings).toEqual([]);
        }
      }),
      runs,
    );
  });

  test("every cell that cannot be read is spoken of once", () => {
    fc.assert(
      fc.property(anyRow, (row) => {
        const [{ unreadable, findings }] = checkedTable({ headers: HEADERS, rows: [row] })
          .results as [TestResult];
        const aboutReading = ["not-a-number", "cannot-be-read", "alcohol-unit-missing"];
        const told = findings.filter(({ rule }) => aboutReading.includes(rule));
        expect(told.map(({ field }) => field).sort()).toEqual(Object.keys(unreadable).sort());
      }),
      runs,
    );
  });

  test("one row never changes the result of another", () => {
    fc.assert(
      fc.property(anyRows, anyRow, (rows, other) => {
        const one = checkedTable({ headers: HEADERS, rows });
        const both = checkedTable({ headers: HEADERS, rows: [...rows, other] });
        // What stands in a column also tells what it is; a row that tips that is not looked at here.
        fc.pre(Object.keys(one.columns).join() === Object.keys(both.columns).join());
        fc.pre(one.reading.unread.length === both.reading.unread.length);
        const [alone, together] = [one.results, both.results];
        const results = (of: readonly TestResult[]) =>
          of
            .slice(0, rows.length)
            .map(({ state, air, specification }) => [state, air, specification]);
        expect(results(together)).toEqual(results(alone));
      }),
      runs,
    );
  });

  test("blank rows give blanks and move nothing", () => {
    fc.assert(
      fc.property(anyRows, fc.nat({ max: 5 }), (rows, at) => {
        const blank: CellValue[] = HEADERS.map((_, i) => ["", null, "—"][i % 3] as CellValue);
        const place = Math.min(at, rows.length);
        const withBlank = [...rows.slice(0, place), blank, ...rows.slice(place)];
        const result = checkedTable({ headers: HEADERS, rows: withBlank });
        expect(result.results[place]).toMatchObject({ state: "", findings: [], sample: "" });
        const without = checkedTable({ headers: HEADERS, rows });
        const found = (of: readonly TestResult[]) =>
          of.flatMap(({ findings }) => findings.map(({ rule, field }) => [rule, field]));
        expect(found(result.results)).toEqual(found(without.results));
      }),
      runs,
    );
  });

  test("the table is left as it was, and the same table gives the same result", () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const table = { headers: HEADERS, rows };
        const before = structuredClone(table);
        const first = said(checkedTable(table));
        expect(table).toEqual(before);
        expect(said(checkedTable(table))).toEqual(first);
      }),
      { numRuns: 50 },
    );
  });
});

test("in steps or at once, the result is the same", () => {
  const sheet = sheetFor(
    Array.from({ length: 1200 }, (_, i) => ({ Foam: i % 4, "Reported air": 6 })),
  );
  const shares: number[] = [];
  const steps = checkTableInSteps(sheet);
  for (;;) {
    const step = steps.next();
    if (step.done) {
      expect(said(Problem.unless(step.value))).toEqual(said(checkedTable(sheet)));
      break;
    }
    shares.push(step.value);
  }
  expect(shares.length).toBeGreaterThan(3);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

describe("a specification in one cell", () => {
  test.each<[headers: string[], cells: CellValue[], limits: object]>([
    [["Target air"], ["6 ± 1.5"], { low: 4.5, high: 7.5 }],
    [["Target air"], ["6.0 +2/-1"], { low: 5, high: 8 }],
    [["Target air"], ["min 4"], { low: 4, high: undefined }],
    [["Target air", "Tolerance"], [6, "+2/-1"], { low: 5, high: 8 }],
    [["Target air", "Tolerance"], ["4.5 to 7.5", 1], { low: 4.5, high: 7.5 }],
    [["Low limit", "High limit"], [4.5, "max 7.5"], { low: 4.5, high: 7.5 }],
    [["Low limit"], ["4.5-7.5"], { low: 4.5, high: 7.5 }],
    [["Target air"], ["6"], { low: undefined, high: undefined }],
  ])("%j: %j gives %j (what the words say)", (headers, cells, limits) => {
    const table = { headers: ["Final reading", ...headers], rows: [[6, ...cells]] };
    expect(checkedTable(table).results[0]!.limits).toEqual(limits);
  });
});

test("a reading on a longer scale counts where the scale is said to reach so far", () => {
  const table = { headers: ["First reading", "Second reading", "Cups"], rows: [[9.5, 9.5, 1]] };
  expect(checkedTable(table).results[0]!.state).toBe("incomplete");
  const { results } = checkedTable(table, { scaleEnd: 10 });
  expect(results[0]).toMatchObject({ state: "valid", air: 10.5 });
  // With the cup the level stood at 10.5, beyond that scale, so the cup was needed.
  expect(results[0]!.findings.map(({ rule }) => rule)).not.toContain("cups-not-needed");
});

test.each<[second: CellValue, says: string[], unrecorded: boolean, source: string]>([
  [6.25, ["column-may-decide", "column-may-decide"], false, "all is said of the two columns"],
  [
    null,
    ["column-may-decide", "column-may-decide", "agreement-not-recorded"],
    true,
    "the second test has one reading only, whatever the columns hold",
  ],
])(
  "two columns that could both be the second reading are asked about, not called absent (our own rule): %s",
  (second, says, unrecorded) => {
    const twice = "Second reading (%)";
    const { findings, notLookedAt } = checkedTable({
      headers: ["Sample", "First reading (%)", twice, twice, "Alcohol (oz)"],
      rows: [
        ["S-1", 6, 6, 6.25, 16],
        ["S-2", 6, second, second, 16],
      ],
    });
    expect(findings.map(({ rule }) => rule)).toEqual(says);
    expect(notLookedAt.includes("second-reading")).toBe(unrecorded);
    expect(findings[0]!.values).toEqual({
      mayBe: { either: ["field-second", "field-third", "field-final"].map((say) => ({ say })) },
    });
  },
);
