import { dispositionRuleNamed } from "../../src/acceptance/disposition/rules";
import { operatorsFromCell } from "../../src/acceptance/operators";
import { testingRuleNamed, type TestingRule } from "../../src/acceptance/tests-due/rules";
import { mostWaterCement } from "../../src/acceptance/water-cement/exposure-limit";

/* How people write the rules, the operators and the classes that a specification names ("common practice"). */

const ACI = "ACI 318-08";
const EACH_100 = "100 yd3";
const UFGS = "UFGS 03301A";

test.each([
  ["ACI 318-08", ACI],
  ["  aci 318-08 ", ACI],
  ["ACI", ACI],
  ["318", ACI],
  ["ACI code", ACI],
  ["each 150 yd3", ACI],
  ["100 yd3", EACH_100],
  ["100 YD3", EACH_100],
  ["each 100 cu yd", EACH_100],
  ["76 m3", EACH_100],
  ["UFGS 03301A", UFGS],
  ["ufgs", UFGS],
  ["3301", UFGS],
  ["03301", UFGS],
  ["twice in 8 h", UFGS],
  ["eight hours", UFGS],
])("%j is the testing rule %s", (text, name) => {
  expect((testingRuleNamed(text) as TestingRule).name).toBe(name);
});

// A number in another rule's name is not the rule.
test.each([
  "each 80 yd3",
  "1000 yd3",
  "1500 ft2",
  "ACI 301",
  "ACI code 301",
  "now and then",
  "18",
  "",
])("%j names no testing rule, and those that are held are said", (text) => {
  expect(testingRuleNamed(text)).toMatchObject({
    id: "tests-rule-unknown",
    values: { names: "ACI 318-08, 100 yd3, UFGS 03301A" },
  });
});

test.each([
  ["check test", "check test"],
  ["C94", "check test"],
  ["C-94", "check test"],
  ["C 94", "check test"],
  ["Check", "check test"],
  ["preliminary sample", "preliminary sample"],
  ["adjusted", "preliminary sample"],
  ["averaged", "averaged"],
  ["mean of two", "averaged"],
  ["UFGS", "averaged"],
])("%j is the rule of decision %s", (text, name) => {
  expect(dispositionRuleNamed(text)).toBe(name);
});

test.each([
  ...["one", "1", "single", "same", "one operator", "Single Operator", "single-operator"].map(
    (text) => [text, "one"] as const,
  ),
  ...["several", "2", "two", "multi", "multiple", " several operators ", "multi-operator"].map(
    (text) => [text, "several"] as const,
  ),
  [1, "one"] as const,
  [2, "several"] as const,
])("%j is %s", (cell, operators) => {
  expect(operatorsFromCell(cell)).toBe(operators);
});

test.each([
  ["three", "operators-unknown"],
  ["", "operators-unknown"],
  [{ error: "#N/A" }, "cell-error"],
])("%j is no number of operators: %s", (cell, id) => {
  expect(operatorsFromCell(cell)).toMatchObject({ id });
});

// ACI 318-19 Table 19.3.2.1 (from memory).
test.each([
  ["F1", 0.55],
  ["f 2", 0.45],
  ["F3, C2", 0.4],
  ["S1/W2", 0.5],
  ["F1 and S3", 0.45],
])("%j allows a w/cm of %d", (classes, most) => {
  expect(mostWaterCement(classes)).toBe(most);
});

// XF2 is a class of EN 206, F10 none at all; a class without a limit leaves open what was meant.
test.each(["XF2", "F10", "F0", "F2, C1", "", "moderate"])("%j has no limit here", (classes) => {
  expect(mostWaterCement(classes)).toMatchObject({
    id: "exposure-without-limit",
    values: { classes: "F1, F2, F3, S1, S2, S3, W2, C2" },
  });
});
