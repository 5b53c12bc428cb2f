import quantile from "@stdlib/stats-base-dists-normal-quantile";
import fc from "fast-check";
import { chanceWithin } from "../../src/acceptance/chance-within";
import { deviationOfResult } from "../../src/acceptance/deviation-of-result";
import { guardedLimits } from "../../src/acceptance/guarded-limits";
import { expectAsPrinted } from "../check-values/worked";
import { resultOf } from "../check-values/result-of";

const SPEC = { low: 4.5, high: 7.5 };

test.each([
  ["C231", 0.05, "4.9606", "7.0394", "derived: 1.64485 × 0.28 = 0.46056"],
  ["C231", 0.25, "4.6889", "7.3111", "derived: 0.67449 × 0.28 = 0.18886"],
  ["C173", 0.05, "5.3142", "6.1430", "derived: 1.64485 × 0.495 = 0.81420, × 0.825 = 1.35700"],
  ["C173", 0.5, "4.5000", "7.5000", "derived: a risk of one half leaves the limits as they are"],
])("%s, risk %s: %s to %s (%s)", (method, risk, low, high) => {
  const guarded = resultOf(
    guardedLimits(SPEC, risk, resultOf(deviationOfResult(undefined, method))),
  );
  expectAsPrinted(guarded.low, low);
  expectAsPrinted(guarded.high, high);
});

test("a limit that is not there stays away", () => {
  const guarded = resultOf(guardedLimits({ low: 4.5 }, 0.05, () => 0.28));
  expect(guarded.high).toBeUndefined();
  expectAsPrinted(guarded.low, "4.9606");
});

test.each([
  [SPEC, 0, 0.28, "risk-out-of-range"],
  [SPEC, 0.6, 0.28, "risk-out-of-range"],
  [SPEC, NaN, 0.28, "risk-out-of-range"],
  [{ low: 5.9, high: 6.1 }, 0.05, 0.28, "guard-leaves-nothing"],
])("%j with risk %s and deviation %s is refused with %s", (limits, risk, deviation, id) => {
  expect(guardedLimits(limits, risk, () => deviation)).toMatchObject({ id });
});

/** Normal numbers from a counting generator, so that every run draws the same ones. */
function seededNormal(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => quantile(uniform(), 0, 1);
}

test.each([
  ["C173", 0.05, 173],
  ["C173", 0.2, 174],
  ["C231", 0.05, 231],
  ["C231", 0.01, 232],
])(
  "%s, risk %s: concrete at a limit is accepted no more often (simulated)",
  (method, risk, seed) => {
    const draws = 100_000;
    const normal = seededNormal(seed);
    const deviationOf = resultOf(deviationOfResult(undefined, method));
    const { low, high } = resultOf(guardedLimits(SPEC, risk, deviationOf));
    for (const truth of [SPEC.low, SPEC.high]) {
      const s = method === "C173" ? 0.11 * truth : 0.28;
      let beyondOwnLimit = 0;
      let accepted = 0;
      for (let i = 0; i < draws; i++) {
        const measured = truth + s * normal();
        if (truth === SPEC.low ? measured >= low! : measured <= high!) beyondOwnLimit++;
        if (measured >= low! && measured <= high!) accepted++;
      }
      // Four standard errors of a simulated share.
      const noise = 4 * Math.sqrt((risk * (1 - risk)) / draws);
      expect(Math.abs(beyondOwnLimit / draws - risk)).toBeLessThan(noise);
      expect(accepted / draws).toBeLessThan(risk + noise);
    }
  },
);

test("with a fixed deviation, a result on a guarded limit lies beyond the limit with just the risk", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.5, noNaN: true }),
      fc.double({ min: 0.01, max: 0.4, noNaN: true }),
      (risk, s) => {
        const { low } = resultOf(guardedLimits({ low: 4.5 }, risk, () => s));
        const { high } = resultOf(guardedLimits({ high: 7.5 }, risk, () => s));
        expect(chanceWithin(low!, { low: 4.5 }, s)).toBeCloseTo(1 - risk, 9);
        expect(chanceWithin(high!, { high: 7.5 }, s)).toBeCloseTo(1 - risk, 9);
        expect(low).toBeGreaterThanOrEqual(4.5);
        expect(high).toBeLessThanOrEqual(7.5);
      },
    ),
  );
});
