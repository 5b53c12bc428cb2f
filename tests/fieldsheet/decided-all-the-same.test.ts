import { checkBlock } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";

const HEADERS = ["Load", "1st", "2nd", "Alcohol (pt)", "Low limit", "High limit", "Remarks"];

function isSaidDecided(test: CellValue[], ...below: CellValue[][]): boolean {
  const checked = checkBlock([HEADERS, ["V1", 6, 6, 2, 4.5, 7.5, null], test, ...below]);
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.findings.some(({ rule }) => rule === "decided-all-the-same");
}
const alone = (text: string): CellValue[] => [text, null, null, null, null, null, null];

test("a load is decided where a missing amount of alcohol changes nothing", () => {
  expect(isSaidDecided(["V2", 6.5, 6.5, null, 4.5, 7.5, null])).toBe(true);
});

test.each([
  ["a fault told beside it", "bowl leaked at the clamp", undefined],
  ["a fault told in a row of words", null, "V2 void, see foreman"],
  ["cups told beside it", "2 cups added", undefined],
])("a test with %s has no air that could decide", (_, remark, line) => {
  const test: CellValue[] = ["V2", 6.5, 6.5, null, 4.5, 7.5, remark];
  expect(isSaidDecided(test, ...(line === undefined ? [] : [alone(line)]))).toBe(false);
});
