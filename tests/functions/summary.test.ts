import { summary } from "../../src/functions/summary";
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

test("a column that is not there is named with what may be given", () => {
  expect(by("technician")).toMatch(/^#VALUE! By: “technician” is no column of the table/);
});
