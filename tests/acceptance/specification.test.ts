import fc from "fast-check";
import { chanceWithin } from "../../src/acceptance/chance-within";
import { checkTestDecision } from "../../src/acceptance/check-test";
import { compareRounded } from "../../src/acceptance/compare-rounded";
import { compareWithLimits, verdictOn } from "../../src/acceptance/limits";
import { marginToLimits } from "../../src/acceptance/margin";
import { specLimits, unsoundLimits } from "../../src/acceptance/spec-limits";
import { CHANCES } from "../check-values/statistics";
import { expectAsPrinted } from "../check-values/worked";

test.each<[number, number | undefined, number | undefined, number, number, string]>([
  [6, undefined, undefined, 4.5, 7.5, "from memory, ACI 318-19: ± 1.5 as delivered"],
  [6, 1, undefined, 5, 7, "UFC 3-250-04FA: 6 ± 1"],
  [4, 0.5, 1, 3.5, 5, "from memory, EN 206: a single result may differ − 0.5 / + 1.0"],
  [4.5, 0.5, 1, 4, 5.5, "derived: 4.5 − 0.5 and 4.5 + 1"],
  [5.1, 0, 0.2, 5.1, 5.3, "derived: no noise of binary fractions"],
  [0.3, 0.1, undefined, 0.2, 0.4, "derived: 0.3 − 0.1 is 0.2 and not 0.19999999999999998"],
])("a target of %s − %s + %s gives %s to %s (%s)", (target, below, above, low, high) => {
  expect(specLimits(target, below, above)).toEqual({ low, high });
});

test.each([
  [-1, undefined],
  [1, -0.5],
])("a tolerance of %s and %s above is refused", (below, above) => {
  expect(specLimits(6, below, above)).toMatchObject({ id: "tolerance-negative" });
});

test.each<[number, number | undefined, number | undefined, string, number, string]>([
  [7.5, 4.5, 7.5, "within", 0, "on a limit is within (common practice)"],
  [7.75, 4.5, 7.5, "above", -0.25, "derived"],
  [4.25, 4.5, 7.5, "below", -0.25, "derived"],
  [5, 4.5, 7.5, "within", 0.5, "derived: the lower limit is the nearer"],
  [7, 4.5, 7.5, "within", 0.5, "derived: the upper limit is the nearer"],
  [0.1 + 0.2, undefined, 0.3, "within", 0, "derived: 0.1 + 0.2 is 0.3"],
  [100.1 - 92.6, 4.5, 7.5, "within", 0, "derived: 100.1 − 92.6 is 7.5"],
  [9, 4, undefined, "within", 5, "derived: only a lower limit"],
  [3.7, 4, 6, "below", -0.3, "AASHTO re:source, April 2015: 3.7 fails 4.0 to 6.0"],
])("%s against %s to %s is %s, margin %s (%s)", (value, low, high, verdict, margin) => {
  expect(compareWithLimits(value, low, high)).toBe(verdict);
  expect(marginToLimits(value, { low, high })).toBe(margin);
});

test("without limits there is neither verdict nor margin", () => {
  expect(verdictOn(6, {})).toBeUndefined();
  expect(marginToLimits(6, {})).toBeUndefined();
});

test.each([
  [7.54, 1, "within", "derived: 7.54 rounds to 7.5"],
  [7.55, 1, "above", "derived: half goes to the even tenth, 7.6"],
  [7.45, 1, "within", "derived: half goes to the even tenth, 7.4"],
  [7.5, 0, "above", "derived: half goes to the even number, 8"],
  [4.45, 1, "below", "derived: half goes to the even tenth, 4.4"],
  [4.4500001, 1, "within", "derived: more than half, 4.5"],
  [12, -1, "above", "derived: in tens 12 is 10"],
])("%s rounded to %s places is %s (%s)", (value, places, verdict) => {
  expect(compareRounded(value, { low: 4.5, high: 7.5 }, places)).toBe(verdict);
});

test.each([0.5, 12, NaN])("%s is no number of places", (places) => {
  expect(compareRounded(7, { high: 8 }, places)).toMatchObject({ id: "places-not-whole" });
});

test.each([
  [{}, "limits-missing"],
  [{ low: 7.5, high: 4.5 }, "limits-the-wrong-way-round"],
])("limits of %j are refused with %s", (limits, id) => {
  expect(unsoundLimits(limits)).toMatchObject({ id });
});

test.each([
  [6, undefined, "accept"],
  [7.5, undefined, "accept"],
  [7.75, undefined, "check test"],
  [7.75, 7.25, "accept"],
  [7.75, 8, "reject"],
  [4.25, 4.25, "reject"],
  // Averaged, 7.75 and 4.25 would give 6.00: each by itself fails.
  [7.75, 4.25, "reject"],
  // Averaged, 9 and 7.5 would lie above.
  [9, 7.5, "accept"],
  [6, 9, "accept"],
])("first %s, check %s: %s (trade article quoting ASTM C94)", (first, check, decision) => {
  expect(checkTestDecision(first, { low: 4.5, high: 7.5 }, check)).toBe(decision);
});

test.each(CHANCES)(
  "%s in %s to %s, deviation %s: chance %s (%s)",
  (value, low, high, s, chance) => {
    expectAsPrinted(chanceWithin(value, { low, high }, s), chance);
  },
);

test("without an error of the test the chance is a certainty", () => {
  expect(chanceWithin(7.5, { high: 7.5 }, 0)).toBe(1);
  expect(chanceWithin(7.51, { high: 7.5 }, 0)).toBe(0);
});

describe("chance, margin and comparison never contradict each other", () => {
  const hundredths = (min: number, max: number) =>
    fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);
  const value = hundredths(0, 15);
  const deviation = fc.double({ min: 0.01, max: 3, noNaN: true });

  test("with one limit: outside, negative margin and a chance under one half are one and the same", () => {
    fc.assert(
      fc.property(value, hundredths(0, 15), deviation, fc.boolean(), (value, limit, s, upper) => {
        const limits = upper ? { high: limit } : { low: limit };
        const verdict = compareWithLimits(
          value,
          upper ? undefined : limit,
          upper ? limit : undefined,
        );
        const margin = marginToLimits(value, limits)!;
        const chance = chanceWithin(value, limits, s);
        expect(margin < 0).toBe(verdict !== "within");
        expect(chance < 0.5).toBe(verdict !== "within");
        expect(chance === 0.5).toBe(margin === 0);
      }),
      { numRuns: 2000 },
    );
  });

  test("with two limits: outside leaves less than one half, and more than one half is within", () => {
    fc.assert(
      fc.property(value, hundredths(0, 10), hundredths(0, 5), deviation, (value, low, width, s) => {
        const limits = { low, high: Math.round((low + width) * 100) / 100 };
        const verdict = compareWithLimits(value, limits.low, limits.high);
        const margin = marginToLimits(value, limits)!;
        const chance = chanceWithin(value, limits, s);
        expect(margin < 0).toBe(verdict !== "within");
        if (verdict !== "within") expect(chance).toBeLessThan(0.5);
        if (chance > 0.5) expect(margin).toBeGreaterThan(0);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
      }),
      { numRuns: 2000 },
    );
  });

  test("nearer to the middle the chance is never less", () => {
    fc.assert(
      fc.property(value, value, deviation, (one, other, s) => {
        const limits = { low: 4.5, high: 7.5 };
        const [out, inn] = Math.abs(one - 6) > Math.abs(other - 6) ? [one, other] : [other, one];
        const chances = [inn, out].map((at) => chanceWithin(at, limits, s));
        expect(chances[0]).toBeGreaterThanOrEqual(chances[1]! - 1e-12);
      }),
    );
  });

  test("a result within its limits is accepted, one outside is never accepted by itself", () => {
    fc.assert(
      fc.property(value, fc.option(value, { nil: undefined }), (first, check) => {
        const limits = { low: 4.5, high: 7.5 };
        const within = [first, check].map(
          (result) => result !== undefined && marginToLimits(result, limits)! >= 0,
        );
        const expected =
          within[0] || within[1] ? "accept" : check === undefined ? "check test" : "reject";
        expect(checkTestDecision(first, limits, check)).toBe(expected);
      }),
    );
  });
});
