import { trends, type TrendTest } from "../../../src/acceptance/trend";
import { chartOrder } from "../../../src/pane/trend/chart-order";
import { groupName, pointName } from "../../../src/pane/trend/trend-groups";
import { trendSentences } from "../../../src/pane/trend/trend-words";

// NIST/SEMATECH e-Handbook 6.3.2.2: mean 50.81, limits 45.8159 and 55.8041.
const NIST = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
const testOf = (value: number, record: number, more: Partial<TrendTest> = {}): TrendTest => ({
  record,
  name: `S-${record}`,
  test: "valid",
  value,
  limits: {},
  ...more,
});
const [trend] = trends([
  ...NIST.map((value, i) => testOf(value, i, { limits: { low: 48, high: 53 } })),
  testOf(0, 10, { test: "void" }),
  testOf(0, 11, { test: "incomplete", value: undefined }),
]);

test("the words say what the chart shows (NIST/SEMATECH 6.3.2.2)", () => {
  const said = trendSentences(trend!, ".");
  expect(said).toContain("Results: 10.");
  expect(said).toContain("Left out: 1 void and 1 incomplete.");
  expect(said).toContain("Mean 50.81 %, control limits 45.82 % to 55.80 %.");
  expect(said).toContain("Specification 48.00 % to 53.00 %.");
  // 47.6, 47.8 and 53.6 lie outside 48 to 53.
  expect(said).toContain("Outside the specification: 3.");
});

test("control limits from few results are said to be uncertain", () => {
  expect(trendSentences(trend!, ".").join(" ")).toMatch(/rest on 10 results only\. Below 20/);
  const many = trends([...NIST, ...NIST].map((value, i) => testOf(value, i)));
  expect(trendSentences(many[0]!, ".").join(" ")).not.toMatch(/results only/);
});

test("one test alone has no control limits, and that is said", () => {
  const said = trendSentences(trends([testOf(6, 0)])[0]!, ".");
  expect(said).toEqual([
    "Results: 1.",
    "A control chart needs two values or more. Give more results of the same mix.",
  ]);
});

test("different specifications are said, and one-sided ones too", () => {
  const both = [testOf(6, 0, { limits: { low: 4 } }), testOf(6, 1, { limits: { low: 5 } })];
  expect(trendSentences(trends(both)[0]!, ".").join(" ")).toMatch(/different specifications/);
  expect(trendSentences(trends(both.slice(1))[0]!, ".")).toContain(
    "Specification: at least 5.00 %.",
  );
});

test("a chart for the spreadsheet has a line for each limit there is", () => {
  const order = chartOrder(trend!, "Air");
  expect(order.names).toHaveLength(10);
  expect(order.lines.map(({ name }) => name)).toEqual([
    "Air, %",
    "Mean",
    "Lower control limit",
    "Upper control limit",
    "Low limit",
    "High limit",
  ]);
  expect(order.lines.every(({ values }) => values.length === 10)).toBe(true);
  expect(chartOrder(trends([testOf(6, 0)])[0]!, "Air").lines).toHaveLength(1);
});

test("groups and points have a name even where the sheet gives none", () => {
  const [first, second] = trends(
    [testOf(6, 0, { mix: "LW-4", day: "2026-05-31" }), testOf(6, 1)],
    "mix and day",
  );
  expect(groupName(first!)).toBe("LW-4, 2026-05-31");
  expect(groupName(second!)).toBe("Without a mix, without a day");
  expect(groupName(trend!)).toBe("All tests");
  expect(pointName({ name: "", record: 4 })).toBe("Test 5");
});
