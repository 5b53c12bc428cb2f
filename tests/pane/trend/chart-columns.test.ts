import { trends } from "../../../src/acceptance/trend";
import { chartColumns } from "../../../src/pane/trend/chart-columns";

const pointsOf = (values: readonly number[]) =>
  trends(
    values.map((value, record) => ({
      record,
      name: "",
      test: "valid" as const,
      value,
      limits: { low: 5, high: 7 },
    })),
  )[0]!.points;

test("neighbours are gathered with their lowest, highest and mean (by hand)", () => {
  expect(chartColumns(pointsOf([6, 4, 8, 6, 6]), 2)).toEqual([
    { from: 1, to: 3, lowest: 4, highest: 8, mean: 6, below: true, above: true },
    { from: 4, to: 5, lowest: 6, highest: 6, mean: 6, below: false, above: false },
  ]);
});

test("no point is lost, and there are no more columns than there is room for", () => {
  const columns = chartColumns(
    pointsOf(Array.from({ length: 1001 }, (_, i) => 5 + (i % 9) / 4)),
    90,
  );
  expect(columns.length).toBeLessThanOrEqual(90);
  expect(columns[0]!.from).toBe(1);
  expect(columns.at(-1)!.to).toBe(1001);
  columns.slice(1).forEach(({ from }, i) => expect(from).toBe(columns[i]!.to + 1));
});
