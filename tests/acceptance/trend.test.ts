import { trends, type TrendTest } from "../../src/acceptance/trend";
import { INDIVIDUALS } from "../check-values/statistics";
import { expectAsPrinted } from "../check-values/worked";

const LIMITS = { low: 45, high: 53 };

function tested(
  value: number | undefined,
  record: number,
  more: Partial<TrendTest> = {},
): TrendTest {
  return { record, name: `P-${record + 1}`, test: "valid", value, limits: LIMITS, ...more };
}

test(`control limits are those of the individuals chart (${INDIVIDUALS.source})`, () => {
  const [trend] = trends(INDIVIDUALS.values.map((value, i) => tested(value, i)));
  expectAsPrinted(trend!.limits!.lower, INDIVIDUALS.lower);
  expectAsPrinted(trend!.limits!.mean, INDIVIDUALS.mean);
  expectAsPrinted(trend!.limits!.upper, INDIVIDUALS.upper);
  expect(trend!.specification).toEqual(LIMITS);
  expect(
    trend!.points.filter(({ verdict }) => verdict === "above").map(({ record }) => record),
  ).toEqual([8]);
});

test("void and incomplete tests and blank rows are left out and counted", () => {
  const [trend] = trends([
    tested(6, 0),
    tested(9, 1, { test: "void" }),
    tested(undefined, 2, { test: "incomplete" }),
    tested(undefined, 3, { test: "" }),
    tested(undefined, 4, { test: "void" }),
    tested(7, 5),
  ]);
  expect(trend!.points.map(({ record, value }) => [record, value])).toEqual([
    [0, 6],
    [5, 7],
  ]);
  expect(trend!.leftOut).toEqual({ void: 2, incomplete: 1, blank: 1 });
  // Derived: the moving range is 1, so the limits are 6.5 ± 3 / 1.128.
  expectAsPrinted(trend!.limits!.upper, "9.1596");
});

test("one point has no control limits, and no point neither", () => {
  expect(trends([tested(6, 0)])[0]).toMatchObject({ limits: undefined, points: [{ signals: [] }] });
  expect(trends([tested(6, 0, { test: "void" })])[0]).toMatchObject({
    points: [],
    leftOut: { void: 1, incomplete: 0, blank: 0 },
  });
  expect(trends([])).toEqual([]);
});

test("a point far off is signalled, with its place in the order", () => {
  const values = [6, 6.25, 6, 6.25, 6, 6.25, 6, 6.25, 9, 6, 6.25, 6, 6.25, 6, 6.25];
  const [trend] = trends(values.map((value, i) => tested(value, i)));
  // Derived: mean 94.75 / 15, moving range (12 × 0.25 + 2.75 + 3) / 14 = 0.625, + 3 × 0.625 / 1.128.
  expectAsPrinted(trend!.limits!.upper, "7.979");
  expect(trend!.points.filter(({ signals }) => signals.includes("beyond-a-limit"))).toEqual([
    expect.objectContaining({ record: 8, name: "P-9" }),
  ]);
});

const MIXED = [
  tested(6, 0, { mix: "LW-2", day: "2026-06-01" }),
  tested(5, 1, { mix: "lw-2 ", day: "2026-06-02" }),
  tested(7, 2, { mix: "NW-1", day: "2026-06-01" }),
  tested(8, 3, { day: "2026-06-02" }),
];

test.each([
  ["all", [[undefined, undefined, [0, 1, 2, 3]]]],
  [
    "mix",
    [
      ["LW-2", undefined, [0, 1]],
      ["NW-1", undefined, [2]],
      ["", undefined, [3]],
    ],
  ],
  [
    "day",
    [
      [undefined, "2026-06-01", [0, 2]],
      [undefined, "2026-06-02", [1, 3]],
    ],
  ],
  [
    "mix and day",
    [
      ["LW-2", "2026-06-01", [0]],
      ["LW-2", "2026-06-02", [1]],
      ["NW-1", "2026-06-01", [2]],
      ["", "2026-06-02", [3]],
    ],
  ],
] as const)("grouped by %s", (grouping, expected) => {
  const groups = trends(MIXED, grouping).map(({ mix, day, points }) => [
    mix,
    day,
    points.map(({ record }) => record),
  ]);
  expect(groups).toEqual(expected);
});

test("a specification is given for the group only where all its points have the same", () => {
  const other = tested(6, 1, { limits: { low: 4.5, high: 7.5 } });
  expect(trends([tested(50, 0), other])[0]!.specification).toBeUndefined();
  expect(trends([tested(50, 0, { limits: {} })])[0]!.specification).toBeUndefined();
});
