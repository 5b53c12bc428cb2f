import { placeOf } from "../../../src/pane/state/checked-area";
import { whereOf } from "../../../src/pane/state/where-of";
import { checkedSheet } from "../report/checked-sheet";

const checked = checkedSheet([
  ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Foam", "Remarks"],
  ["L-1", 6, 6, 16, 3, ""],
  ["L-2", 6, 6, 16, 1, "VOID, leak"],
]);
const found = (rule: string) =>
  checked.result.findings.find((finding) => finding.rule === rule && finding.record !== null)!;

test.each<[rule: string, where: string, row: number, column: number]>([
  ["foam-over-limit", "E2", 1, 4],
  // The word stands in a column that is none of ours.
  ["called-void", "F3", 2, 5],
])("a finding of %s stands and leads to %s", (rule, where, row, column) => {
  expect(whereOf(found(rule), checked)).toBe(where);
  expect(placeOf(checked, found(rule))).toMatchObject({ row, column });
});

test("one of a test as a whole says its row", () => {
  expect(whereOf({ ...found("foam-over-limit"), field: null }, checked)).toBe("Row 2");
});
