import { summary } from "../../src/functions/summary";
import fc from "fast-check";
import { mean, sampleStandardDeviation } from "simple-statistics";
import { check } from "../../src/functions/field-sheet";
import { shown } from "./custom-functions-runtime";

const headers = [
  ["Sample", "Date", "Mix", "Plant", "First reading", "Second reading", "Alcohol (oz)", "Foam"],
];
const rows = [
  ["S-1", 46000, "LW4", "North", 6, 6, 16, 1],
  ["S-2", 46000, "LW4", "South", 7, 7, 24, 1],
  ["S-3", 46001, "NW5", "North", 5, 5, 16, 1],
  ["S-4", 46001, "NW5", "North", 5.5, 5.5, 48, 3],
  ["S-5", 46001, "NW5", "South", 8, null, 8, 1],
  [null, null, null, null, null, null, null, null],
  ["S-6", 46001, "NW5", "South", 8, 8, 16, 1],
];

function by(name: string): unknown {
  return shown(() => summary(headers, rows, [[name]], [[4.5]], [[7]]));
}

test("by mix: counts, mean, deviation, range, limits and alcohol (worked by hand)", () => {
  const [header, one, two] = by("mix") as unknown[][];
  expect(header![0]).toBe("mix");
  expect(header).toHaveLength(11);
  // 6 and 7: mean 6.5, √0.5; 7 lies on the limit; (16 + 24) / 2.
  expect(one).toEqual(["LW4", 2, 0, 0, 6.5, expect.closeTo(Math.SQRT1_2, 12), 6, 7, 0, 1, "20 oz"]);
  // 5 and 8 are valid, one is void by its foam, one has no second reading; 8 is above 7; 8, 16, 16, 48.
  expect(two).toEqual([
    "NW5",
    4,
    1,
    1,
    6.5,
    expect.closeTo(3 / Math.SQRT2, 12),
    5,
    8,
    1,
    0,
    "16 oz",
  ]);
});

test.each<[string, unknown[][], unknown[], string]>([
  [
    "litres and ounces",
    [
      ["A", 6, 6, "1.4 L"],
      ["A", 6, 6, "48 oz"],
      ["A", 6.25, 6.25, "0.7 L"],
    ],
    // 1.4 L and 48 oz subtract 0.30, 0.7 L nothing: 5.75, 5.75 and 6.25.
    ["A", 3, 0, 0, 5.9167, 0.2887, 5.75, 6.25, 0, 0, "1.05 L"],
    "C173 Table 1; (5.75 + 5.75 + 6.25) / 3; √(0.16667 / 2); two amounts in litres, (0.7 + 1.4) / 2",
  ],
  [
    "a limit that is reached and one that is passed",
    [
      ["A", 4.5, 4.5, "8 oz"],
      ["A", 4.25, 4.25, "8 oz"],
      ["A", 7, 7, "8 oz"],
    ],
    ["A", 3, 0, 0, 5.25, 1.5207, 4.25, 7, 1, 2, "8 oz"],
    "15.75 / 3; √(4.625 / 2); 4.50 and 7.00 are limits, 4.25 is below",
  ],
  [
    "nothing that stands",
    [
      ["A", 5, 5.5, "8 oz"],
      ["A", 5, null, "24 oz"],
    ],
    ["A", 2, 0, 2, "", "", "", "", 0, 0, "16 oz"],
    "a third reading is missing, a second is; (8 + 24) / 2",
  ],
])("of %s: %j gives %j (worked by hand: %s)", (_, tests, line) => {
  const heads = [["Mix", "First reading", "Second reading", "Alcohol"]];
  const [, found] = shown(() => summary(heads, tests, [["mix"]], [[4.5]], [[7]])) as unknown[][];
  const rounded = found!.map((cell) => (typeof cell === "number" ? Number(cell.toFixed(4)) : cell));
  expect(rounded).toEqual(line);
});

test.each([
  ["day", ["2025-12-09", "2025-12-10"]],
  ["Plant", ["North", "South"]],
  ["  plant ", ["North", "South"]],
])("by %s there are %j", (name, groups) => {
  expect((by(name) as unknown[][]).slice(1).map(([group]) => group)).toEqual(groups);
});

test("every test is counted once, whatever it is put together by", () => {
  for (const name of ["mix", "day", "Plant"]) {
    const lines = (by(name) as unknown[][]).slice(1);
    expect(lines.reduce((sum, line) => sum + (line[1] as number), 0)).toBe(6);
  }
});

test.each([
  ["technician", "Tested by"],
  ["technician", "Inspector"],
  ["Technician", "TECHNICIAN NAME"],
  ["technician", "Laboratorista"],
  ["plant", "Batch plant"],
  ["plant", "Mischwerk"],
])("by %s where the column is headed “%s” (common practice)", (name, header) => {
  const headed = [headers[0]!.map((cell) => (cell === "Plant" ? header : cell))];
  const lines = shown(() => summary(headed, rows, [[name]])) as unknown[][];
  expect(lines.slice(1).map(([group]) => group)).toEqual(["North", "South"]);
});

test("of two columns that may name the technician neither is taken", () => {
  const headed = [
    headers[0]!.map((cell) => ({ Plant: "Tester", Foam: "Inspector" })[cell] ?? cell),
  ];
  expect(shown(() => summary(headed, rows, [["technician"]]))).toMatch(/^#VALUE! By: “technician”/);
});

describe("against FRESH.CHECK of the same table", () => {
  const AIR = fc.integer({ min: 12, max: 36 }).map((quarters) => quarters / 4);
  const oneTest = fc.record({
    mix: fc.constantFrom("LW4", "NW5", "lw4", "", "X9"),
    first: fc.option(AIR),
    second: fc.option(AIR),
    alcohol: fc.constantFrom(0, 16, 48, 64, null, "some"),
    foam: fc.constantFrom(0, 1, 2, 2.25, 3, null),
    who: fc.constantFrom("A. Nilsen", "B. Orozco", null),
  });
  const limits = fc.record({
    low: fc.constantFrom(4, 4.5, 5),
    high: fc.constantFrom(6, 7, 7.5),
    other: fc.boolean(),
  });

  test("every count, mean, range and verdict is that of its rows, with the limits of a setup", () => {
    fc.assert(
      fc.property(fc.array(oneTest, { minLength: 1, maxLength: 14 }), limits, (tests, given) => {
        const heads = [
          ["Sample", "Mix", "First reading", "Second reading", "Alcohol (oz)", "Foam", "Tested by"],
        ];
        const body = tests.map(
          ({ mix, first, second, alcohol, foam, who }, i) =>
            [`S-${i}`, mix, first, second, alcohol, foam, who] as unknown[],
        );
        const setup = [
          ["Mix", "Low", "High"],
          ["LW4", given.low, given.high],
          ...(given.other ? [["NW5", given.low, ""]] : []),
        ];
        const cells = check(heads, body, undefined, undefined, setup);
        for (const [name, at] of [
          ["mix", 1],
          ["technician", 6],
        ] as const) {
          const lines = summary(heads, body, [[name]], undefined, undefined, setup).slice(1);
          const groups = [...new Set(body.map((row) => String(row[at] ?? "").trim()))];
          expect(lines.map(([of]) => of)).toEqual(groups);
          for (const line of lines) {
            const own = cells.filter((_, i) => String(body[i]![at] ?? "").trim() === line[0]);
            const airs = own.flatMap(([, air]) => (typeof air === "number" ? [air] : []));
            const having = (column: number, ...words: string[]) =>
              own.filter((row) => words.includes(String(row[column]))).length;
            expect(line.slice(1, 4)).toEqual([
              own.length,
              having(0, "void"),
              having(0, "incomplete"),
            ]);
            expect(having(0, "valid")).toBe(airs.length);
            expect(line[8]).toBe(having(2, "below", "above"));
            if (airs.length === 0) expect(line.slice(4, 8)).toEqual(["", "", "", ""]);
            else {
              expect(line[4]).toBeCloseTo(mean(airs), 9);
              expect(line[6]).toBe(Math.min(...airs));
              expect(line[7]).toBe(Math.max(...airs));
            }
            if (airs.length > 1) expect(line[5]).toBeCloseTo(sampleStandardDeviation(airs), 9);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test("a mix that the setup does not specify is outside nothing", () => {
    const setup = [
      ["Mix", "Low", "High"],
      ["LW4", 4.5, 6.5],
    ];
    const lines = summary(headers, rows, [["mix"]], undefined, undefined, setup);
    // 6 and 7 of LW4 against 6.5: one above; NW5 is held against nothing.
    expect(lines.slice(1).map((line) => [line[0], line[8]])).toEqual([
      ["LW4", 1],
      ["NW5", 0],
    ]);
  });
});

test("a column that is not there is named with what may be given", () => {
  expect(by("technician")).toMatch(/^#VALUE! By: “technician” is no column of the table/);
});
