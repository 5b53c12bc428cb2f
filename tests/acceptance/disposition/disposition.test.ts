import fc from "fast-check";
import { disposition } from "../../../src/acceptance/disposition/disposition";
import {
  dispositionRuleNamed,
  DISPOSITION_RULES,
  type DispositionRule,
} from "../../../src/acceptance/disposition/rules";
import { compareWithLimits } from "../../../src/acceptance/limits";
import { DISPOSITIONS } from "../../check-values/decisions";

const air = fc.integer({ min: 0, max: 48 }).map((quarters) => quarters / 4);
const rules = fc.constantFrom(...DISPOSITION_RULES.map(({ name }) => name));

test.each(DISPOSITIONS)("%s against %s to %s by %s with %j: %s (%s)", (...row) => {
  const [first, low, high, rule, more, decision] = row;
  const named = rule === undefined ? undefined : dispositionRuleNamed(rule);
  expect(disposition({ first, ...more }, { low, high }, named as DispositionRule)).toBe(decision);
});

test("a rule that nobody knows is said with those that are held", () => {
  expect(dispositionRuleNamed("twice")).toMatchObject({
    id: "disposition-rule-unknown",
    values: { value: "twice", names: "check test, preliminary sample, averaged" },
  });
});

test.each([
  [{ first: 8, far: -1 }, "far-below-zero", "far"],
  [{ first: 8, minutesLeft: -1 }, "left-below-zero", "minutes"],
  [{ first: 8, revolutionsLeft: -5 }, "left-below-zero", "revolutions"],
])("%j is said to be wrong", (load, id, place) => {
  expect(disposition(load, { low: 4.5, high: 7.5 })).toMatchObject({ id, place });
});

test("nothing is accepted of which every result lies outside, but by an average", () => {
  fc.assert(
    fc.property(air, air, rules, (first, second, rule) => {
      const outside = [first, second].every(
        (each) => compareWithLimits(each, 4.5, 7.5) !== "within",
      );
      if (!outside || rule === "averaged") return;
      expect(disposition({ first, second }, { low: 4.5, high: 7.5 }, rule)).not.toBe("accept");
    }),
  );
});

test("a load is rejected only after two results", () => {
  fc.assert(
    fc.property(air, rules, (first, rule) => {
      expect(disposition({ first }, { low: 4.5, high: 7.5 }, rule)).not.toBe("reject");
    }),
  );
});
