import { say } from "../../src/messages/catalogue";
import fc from "fast-check";
import { measuredAmounts } from "../../src/acceptance/alcohol-steps";
import { outcomeOf, type BorderlineTest } from "../../src/acceptance/borderline-test";
import { outcomeGrid } from "../../src/acceptance/outcome-grid";
import { turningPoints } from "../../src/acceptance/turning-points";
import { whatIf } from "../../src/acceptance/what-if";
import { expectAsPrinted } from "../check-values/worked";
import { isIssue } from "../../src/measure/issue";
import { resultOf } from "../check-values/result-of";

/** 7.75 − 0.30 = 7.45, reported as 7.50: on the upper limit of 6.0 ± 1.5. */
const ON_THE_LIMIT: BorderlineTest = {
  reading: 7.75,
  alcohol: { amount: 48, unit: "oz" },
  limits: { low: 4.5, high: 7.5 },
};

test("the result step by step (derived: 7.75 − 0.30 + 2 × 1.00 = 9.45, reported 9.50)", () => {
  const { steps, air } = resultOf(whatIf({ ...ON_THE_LIMIT, cups: 2 }));
  expect(steps).toEqual([
    { name: "reading", change: 7.75, value: 7.75, interpolated: false },
    { name: "alcohol", change: -0.3, value: 7.45, interpolated: false },
    { name: "cups", change: 2, value: 9.45, interpolated: false },
    { name: "rounding", change: 0.05, value: 9.5, interpolated: false },
  ]);
  expect(air).toBe(9.5);
});

test("a step that changes nothing is there too, and says zero", () => {
  const { steps } = resultOf(whatIf({ reading: 6, limits: {} }));
  expect(steps.map(({ change }) => change)).toEqual([6, 0, 0, 0]);
  expect(steps.some(({ change }) => Object.is(change, -0))).toBe(false);
});

test("an interpolated correction is marked (derived: 40 oz lies half-way, 0.15)", () => {
  const { steps } = resultOf(whatIf({ ...ON_THE_LIMIT, alcohol: { amount: 40, unit: "oz" } }));
  expect(steps[1]).toEqual({ name: "alcohol", change: -0.15, value: 7.6, interpolated: true });
});

test("margin, chance and what comes next", () => {
  const looked = resultOf(whatIf(ON_THE_LIMIT));
  expect(looked).toMatchObject({ air: 7.5, verdict: "within", margin: 0, decision: "accept" });
  // Derived: 11 % of 7.5 is 0.825; half lies above 7.5, and 0.00014 below 4.5, 3.64 deviations off.
  expect(looked.certainty!.deviation).toBeCloseTo(0.825, 12);
  expectAsPrinted(looked.certainty!.chance, "0.4999");
  expect(looked.certainty!.published).toMatchObject({ method: "C173" });
  expect(say(looked.certainty!.published!.source)).toContain("to be verified");
});

test("the user's own deviation goes before the published one (derived: 0.893 deviations)", () => {
  const { certainty } = resultOf(whatIf({ ...ON_THE_LIMIT, reading: 7.5 }, { deviation: 0.28 }));
  expectAsPrinted(certainty!.chance, "0.814");
  expect(certainty!.published).toBeUndefined();
});

test.each([
  [undefined, "check test"],
  [7.25, "accept"],
  [7.75, "reject"],
])("a result above with a check test of %s: %s (trade article quoting ASTM C94)", (check, next) => {
  expect(resultOf(whatIf({ ...ON_THE_LIMIT, reading: 8 }, { check })).decision).toBe(next);
});

test("without limits there are steps and a grid, but no verdict", () => {
  const looked = resultOf(whatIf({ ...ON_THE_LIMIT, limits: {} }));
  expect(looked.grid).toHaveLength(4);
  expect(looked.turningPoints).toEqual([]);
  expect(looked).not.toHaveProperty("verdict");
  expect(looked).not.toHaveProperty("certainty");
});

test.each([
  [{ ...ON_THE_LIMIT, reading: 0.078 }, {}, "reading-as-share"],
  [{ ...ON_THE_LIMIT, cups: 0.5 }, {}, "cups-not-whole-number"],
  [{ ...ON_THE_LIMIT, limits: { low: 7.5, high: 4.5 } }, {}, "limits-the-wrong-way-round"],
  [ON_THE_LIMIT, { deviation: 0 }, "deviation-not-above-zero"],
])("%j with %j is refused with %s", (given, options, id) => {
  expect(whatIf(given, options)).toMatchObject({ id });
});

test("the grid of outcomes, each number worked by hand", () => {
  const shown = outcomeGrid({ ...ON_THE_LIMIT, cups: 0 }).map(({ differs, steps, cells }) => [
    differs,
    steps,
    ...cells.map(({ outcome }) => (isIssue(outcome) ? "" : `${outcome.air} ${outcome.verdict}`)),
  ]);
  expect(shown).toEqual([
    // 7.25 … 8.25 less 0.30: 6.95, 7.20, 7.45, 7.70, 7.95
    ["nothing", 0, "7 within", "7.25 within", "7.5 within", "7.75 above", "8 above"],
    ["cups", 1, "8 above", "8.25 above", "8.5 above", "8.75 above", "9 above"],
    // 40 oz: less 0.15: 7.10, 7.35, 7.60, 7.85, 8.10
    ["alcohol", -1, "7 within", "7.25 within", "7.5 within", "7.75 above", "8 above"],
    // 56 oz: less 0.45: 6.80, 7.05, 7.30, 7.55, 7.80
    ["alcohol", 1, "6.75 within", "7 within", "7.25 within", "7.5 within", "7.75 above"],
  ]);
});

test("cells that turn the verdict are marked, and so is the record itself", () => {
  const [asRecorded] = outcomeGrid(ON_THE_LIMIT);
  expect(asRecorded!.cells.map(({ turned }) => turned)).toEqual([false, false, false, true, true]);
  expect(asRecorded!.cells.map(({ recorded }) => recorded)).toEqual([
    false,
    false,
    true,
    false,
    false,
  ]);
  expect(
    outcomeGrid(ON_THE_LIMIT).flatMap(({ cells }) => cells.filter((c) => c.recorded)),
  ).toHaveLength(1);
});

test("a reading off the scale says why, and impossible rows are left out", () => {
  const grid = outcomeGrid({ ...ON_THE_LIMIT, reading: 8.75, alcohol: { amount: 80, unit: "oz" } });
  const last = grid[0]!.cells.at(-1)!.outcome;
  expect(last).toMatchObject({ id: "reading-beyond-scale" });
  expect(grid.map(({ differs, steps }) => [differs, steps])).toEqual([
    ["nothing", 0],
    ["cups", 1],
    ["alcohol", -1],
  ]);
});

test("how much it would take, each worked by hand", () => {
  expect(turningPoints(ON_THE_LIMIT)).toEqual([
    // 8.00 − 0.30 = 7.70 is reported as 7.75; downwards it would take 3.25, to 4.50 − 0.30 = 4.20.
    turn("reading", 7.75, 8, 0.25, "%", 7.75, "above"),
    turn("cups", 0, 1, 1, "", 8.5, "above"),
    // 40 oz still takes off 0.15; under 40 oz nothing counts: 7.75. More alcohol never turns it.
    turn("alcohol", 48, 36, -12, "oz", 7.75, "above"),
  ]);
});

test("in the middle it takes as much down as up (derived: 6 + 2 = 8.00; 1.75 more or less is outside 6.5 to 9.5)", () => {
  const middle: BorderlineTest = { reading: 6, cups: 2, limits: { low: 6.5, high: 9.5 } };
  expect(turningPoints(middle)).toEqual([
    turn("reading", 6, 4.25, -1.75, "%", 6.25, "below"),
    turn("reading", 6, 7.75, 1.75, "%", 9.75, "above"),
    turn("cups", 2, 0, -2, "", 6, "below"),
    turn("cups", 2, 4, 2, "", 10, "above"),
  ]);
});

function turn(
  input: string,
  from: number,
  to: number,
  change: number,
  unit: string,
  air: number,
  verdict: string,
) {
  return { input, from, to, change, unit, air, verdict };
}

test("turning points turn the verdict, and nothing nearer does", () => {
  const borderline = fc.record({
    reading: fc.integer({ min: 4, max: 36 }).map((n) => n / 4),
    cups: fc.integer({ min: 0, max: 3 }),
    alcohol: fc
      .constantFrom("pt", "oz", "L")
      .chain((unit) =>
        fc.constantFrom(...measuredAmounts(unit as "oz")).map((amount) => ({ amount, unit })),
      ),
    limits: fc.constantFrom({ low: 4.5, high: 7.5 }, { low: 5 }, { high: 6.5 }),
  }) as fc.Arbitrary<BorderlineTest>;
  fc.assert(
    fc.property(borderline, (given) => {
      const verdict = (test: BorderlineTest) => {
        const outcome = outcomeOf(test);
        return isIssue(outcome) ? undefined : outcome.verdict;
      };
      const recorded = verdict(given);
      for (const { input, from, to, verdict: turned } of turningPoints(given)) {
        const at = (value: number): BorderlineTest =>
          input === "alcohol"
            ? { ...given, alcohol: { ...given.alcohol!, amount: value } }
            : { ...given, [input]: value };
        expect(verdict(at(to))).toBe(turned);
        expect(turned).not.toBe(recorded);
        const grid =
          input === "alcohol"
            ? measuredAmounts(given.alcohol!.unit)
            : steps(input === "cups" ? 1 : 0.25);
        const between = grid.filter((v) => Math.abs(v - from) < Math.abs(to - from) - 1e-9);
        for (const value of between) expect([recorded, undefined]).toContain(verdict(at(value)));
      }
    }),
  );
});

function steps(step: number): number[] {
  return Array.from({ length: 40 }, (_, i) => i * step);
}
