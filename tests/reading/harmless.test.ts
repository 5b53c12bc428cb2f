import { checkBlock } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import { harmlessAs } from "../../src/reading/harmless";

test.each([
  [["foam"], 2, true],
  [["foam"], 2.5, false],
  [["foam"], "1,5", true],
  [["settle"], 6, true],
  [["settle"], 7, false],
  [["foam", "settle"], 4, false],
  [["foam", "settle"], 1, true],
  [["foam"], -1, false],
  [["foam"], "some", false],
  [["settle", "final"], 1, false],
  [[], 1, false],
] as const)("as %j, %s decides nothing: %s", (fields, cell, harmless) => {
  expect(harmlessAs(fields, "Foam or settling")(cell)).toBe(harmless);
});

test.each([
  ["Foam (cm)", "foam", false],
  ["Foam (div)", "foam", true],
  ["Settling (h)", "settle", false],
  ["Settling (min)", "settle", true],
  ["Settling, s", "settle", true],
  ["Settling (2nd roll)", "settle", true],
] as const)("1 below “%s” decides nothing: %s, %s", (header, field, harmless) => {
  expect(harmlessAs([field], header)(1)).toBe(harmless);
});

test("where no test can be void by such a column, no error is said of it", () => {
  const headers = ["Load", "1st", "Foam", "2nd", "Foam", "Alcohol (pt)"];
  const findingsOf = (foam: number) => {
    const checked = checkBlock([
      headers,
      ["A", 6.5, 1, 6.5, foam, 2],
      ["B", 6, 1, 6, 1, 2],
      ["C", 7, 0, 7, 1, 2],
    ]);
    if (isIssue(checked)) throw new Error(checked.id);
    const ofColumns = checked.findings.filter(({ rule }) => rule.startsWith("column-"));
    return ofColumns.map(({ weight }) => weight);
  };
  expect(findingsOf(1)).not.toContain("error");
  expect(findingsOf(3)).toContain("error");
});

test("foam and settling of every roll are asked about only where one of them may void the test", () => {
  const checked = checkBlock([
    [null, "Roll 1", null, null, "Roll 2", null, null, "Added", null, "Result"],
    [
      "Load",
      "reading",
      "foam",
      "settling",
      "reading",
      "foam",
      "settling",
      "alcohol",
      "water",
      "air",
    ],
    [null, "%", "div", "min", "%", "div", "min", "pt", "cups", "%"],
    ["A", 6.5, 1, 2.5, 6.5, 1, 2, 2, 0, 6.5],
    ["B", 7.5, 2, 5, 7.25, 2.5, 4.5, 3, 0, 7],
    ["C", 8.25, 1, 3, 8.25, 1, 3, 3, 1, 9],
    ["D", 6, 1, 6.5, 6, 1, 3, 2, 0, 6],
  ]);
  if (isIssue(checked)) throw new Error(checked.id);
  const states = checked.results.filter(({ state }) => state !== "").map(({ state }) => state);
  expect(states).toEqual(["valid", "incomplete", "valid", "incomplete"]);
  // They were looked at, so that it is not said that the sheet does not record them.
  expect(checked.notLookedAt).not.toContain("foam");
  expect(checked.notLookedAt).not.toContain("settle");
  // 8.25 less 0.3 for 3 pt and one cup more, to the nearest quarter (ASTM C173, from memory).
  expect(checked.results.find(({ sample }) => sample === "C")?.air).toBe(9);
});

test("water in small whole numbers may be cups, and is asked about where no column holds them", () => {
  const checked = checkBlock([
    ["Load", "1st", "2nd", "Alcohol (pt)", "Water added"],
    ["A", 6.5, 6.5, 2, 0],
    ["B", 7.5, 7.5, 3, 1],
    ["C", 6, 6, 2, 0],
  ]);
  if (isIssue(checked)) throw new Error(checked.id);
  expect(checked.results.map(({ state }) => state)).toEqual([
    "incomplete",
    "incomplete",
    "incomplete",
  ]);
});
