import type { CellValue } from "../../src/measure/cell-value";
import { isNotATestRow } from "../../src/reading/not-a-test-row";

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Remarks"];

describe("rows below the tests (common practice)", () => {
  test.each<[string, CellValue[]]>([
    ["totals", ["Total", 12, 12.5, 48, null]],
    ["a mean behind blanks", [null, "Average:", 6.1, 20, null]],
    ["a mean of so many", ["Average of 3 tests", 6, 6.25, null, null]],
    ["a Spanish mean", ["Promedio", 6, 6, 16, null]],
    ["a French deviation", ["Écart type", 0.2, 0.2, null, null]],
    ["a German mean", ["Mittelwert", 6, 6, 16, null]],
    ["a remark", ["Remarks: pump broke down at noon", null, null, null, null]],
    ["the most of a column that is named", ["Max air", 6, null, null, null]],
    ["a signature", ["Signature", null, null, "J. Orme", null]],
    ["the header again", ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Remarks"]],
    ["the header again, in part", ["SAMPLE", "First reading", null, null, "page 2"]],
  ])("%s", (_, row) => {
    expect(isNotATestRow(row, HEADERS)).toBe(true);
  });
});

describe("tests that look a little like them", () => {
  test.each<[string, CellValue[]]>([
    ["a sample of few letters", ["N1", 6, 6, 16, null]],
    ["a sample named for a mixer", ["MW-1", 6, 6, 16, null]],
    ["a sample whose name begins so", ["Max-3", 6, 6, 16, null]],
    ["a test without numbers", ["S-4", null, null, null, "discarded"]],
    ["a test of texts", ["Key wall", "6", "6.25", "16", null]],
    ["a blank row", [null, null, null, null, null]],
    ["a number first", [7, 6, 6, 16, "Total"]],
  ])("%s", (_, row) => {
    expect(isNotATestRow(row, HEADERS)).toBe(false);
  });
});
