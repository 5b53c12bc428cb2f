import { checkBlock } from "../../src/fieldsheet/check-table";
import { findTestsIn } from "../../src/reading/read-sheet";
import { isIssue } from "../../src/measure/issue";

/*
 * A table of results by load, without a reading: its rows are no labels of a form, whatever the loads are called.
 * Read as one, each of its columns was a test, and the limit a valid air.
 */

const HEADERS = ["Load", "Owner's air", "Contractor's air", "Difference", "Spec low", "Spec high"];
const results = (names: readonly string[]) => [
  HEADERS,
  [names[0]!, 5, 5.5, -0.5, 4.5, 7.5],
  [names[1]!, 5.25, 5.5, -0.25, 4.5, 7.5],
  [names[2]!, 4.5, 5.25, -0.75, 4.5, 7.5],
];

test.each([[["A-1", "A-2", "A-3"]], [["R1", "R2", "R3"]], [["M-1", "M-2", "M-3"]]])(
  "loads called %j are no readings",
  (names) => {
    const result = checkBlock(results(names));
    expect(isIssue(result) && result.id).toBe("no-readings-column");
  },
);

test("labels of readings in the first column are those of a form", () => {
  const found = findTestsIn([
    ["Test", "Result", "Low", "High"],
    ["First reading", 5.5, null, null],
    ["Second reading", 5.5, null, null],
    ["Alcohol (pt)", 2, null, null],
  ]);
  expect(isIssue(found)).toBe(false);
  expect("forms" in found).toBe(true);
});
