import { testingRuleNamed, TESTING_RULES } from "../../../src/acceptance/tests-due/rules";
import type { TestingRule } from "../../../src/acceptance/tests-due/rules";
import { testsDue, type TestsDue } from "../../../src/acceptance/tests-due/tests-due";
import { TESTS_DUE } from "../../check-values/decisions";

test.each(TESTS_DUE)("$rule in $units: $due ($source)", ({ rule, units, placed, due }) => {
  const found = testsDue(placed, testingRuleNamed(rule) as TestingRule, units);
  expect(
    (found as readonly TestsDue[]).map(({ day, mix, required, made, missing }) => [
      day,
      mix,
      required,
      made,
      missing,
    ]),
  ).toEqual(due);
});

test("a volume that is missing is not taken for 0", () => {
  const rule = testingRuleNamed("100 yd3") as TestingRule;
  const placed = [{ day: 46000, mix: "NW5", tests: 1 }];
  expect(testsDue(placed, rule, "us")).toMatchObject({ id: "volumes-needed" });
});

test.each(TESTING_RULES.map((rule) => [rule.name, rule] as const))("%s is named", (name, rule) => {
  expect(testingRuleNamed(name)).toBe(rule);
  expect(testingRuleNamed(`  ${name.toUpperCase()} `)).toBe(rule);
});

test("a rule that nobody knows is said with those that are held", () => {
  expect(testingRuleNamed("now and then")).toMatchObject({ id: "tests-rule-unknown" });
});
