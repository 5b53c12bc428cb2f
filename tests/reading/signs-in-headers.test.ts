import { checkTable } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";

function testOf(headers: string[], row: (string | number)[]) {
  const checked = checkTable({ headers, rows: [row] });
  if (isIssue(checked)) return checked.id;
  const { state, air } = checked.results[0]!;
  return air === undefined ? state : `${state} ${air}`;
}

test.each<[string[], (string | number)[], string]>([
  // A range in the header of a reading numbers it; it is no range that is allowed.
  [["Load", "Reading 1-2 %", "Reading 2-2 %", "Alcohol (pt)"], ["A", 5.5, 5.5, 2], "asked"],
  [["Probe", "1. Ablesung AN", "2. Ablesung AN", "Alkohol (l)"], ["A", 5.5, 5.5, 0.9], "valid 5.5"],
  [["Load", "1st", "2nd", "Alcohol (pt)", "Slump, 1-3 in"], ["A", 5.5, 5.5, 2, 2], "valid 5.5"],
  [["Load", "1st", "2nd", "Alcohol (pt)", "Air ≥", "Air ≤"], ["A", 5.5, 5.5, 2, 5, 8], "valid 5.5"],
])("%j: %j", (headers, row, expected) => {
  const is = testOf(headers, row);
  if (expected === "asked") expect(is).not.toBe("no-readings-column");
  else expect(is).toBe(expected);
});

test("a time to settle is no limit for its sign", () => {
  const headers = ["Load", "1st", "2nd", "Alcohol (pt)", "Settled ≤"];
  expect(testOf(headers, ["A", 5.5, 5.5, 2, 7])).not.toMatch(/^valid/);
});
