import type { CellValue } from "../../../src/measure/cell-value";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { trendSourceOf } from "../../../src/pane/trend/trend-source";

/** The source of a trend of a column in F5 and below. */
function ofColumn(cells: readonly CellValue[], typed = { low: "", high: "" }) {
  const area = { sheetId: "s1", sheetName: "Loads", row: 4, column: 5, rows: cells.length };
  const read = {
    area: { ...area, columns: 1 },
    address: "Loads!F5:F9",
    values: cells.map((cell) => [cell]),
  };
  const store = createPaneStore();
  store.set({ ...typed, trendColumn: { read, decimal: "." } });
  return trendSourceOf(store.get())!;
}

test("a text on top is the header, blanks are skipped, and each number is known by its cell", () => {
  const { tests, unreadable } = ofColumn(["Air (%)", 6, null, "6 1/4", "n/a"]);
  expect(tests.map(({ name, value }) => [name, value])).toEqual([
    ["F6", 6],
    ["F8", 6.25],
  ]);
  expect(unreadable).toBe(0);
});

test("a point leads to its cell", () => {
  const { tests, placeOf } = ofColumn([null, "Air", 6, 7]);
  expect(placeOf!(tests[1]!.record)).toEqual({ sheetId: "s1", row: 7, column: 5 });
});

test("what holds no number is left out and counted", () => {
  const { tests, unreadable } = ofColumn([6, "void", { error: "#N/A" }, 7]);
  expect(tests).toHaveLength(2);
  expect(unreadable).toBe(2);
});

test("limits are those that are typed", () => {
  const { tests } = ofColumn([6, 7], { low: "4.5", high: "7.5" });
  expect(tests[0]!.limits).toEqual({ low: 4.5, high: 7.5 });
});

test.each([
  [["Air", "void"], { low: "", high: "" }, "trend-one-column"],
  [[6, 7], { low: "8", high: "7" }, "limits-crossed"],
  [[6, 7], { low: "x", high: "" }, "not-a-number"],
])("%j with limits %j is refused: %s", (cells, typed, id) => {
  expect(() => ofColumn(cells, typed)).toThrow(expect.objectContaining({ id }));
});
