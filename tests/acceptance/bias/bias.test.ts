import tCdf from "@stdlib/stats-base-dists-t-cdf";
import fc from "fast-check";
import { mean, sampleStandardDeviation, tTestTwoSample } from "simple-statistics";
import { biasOf, type Bias, type TestBy } from "../../../src/acceptance/bias/bias";
import { BIASES } from "../../check-values/decisions";
import { expectAsPrinted } from "../../check-values/worked";
import { normalDeviates } from "../../simulation/normal-deviates";

const air = fc.integer({ min: 8, max: 40 }).map((quarters) => quarters / 4);
const by = (who: string, mix: string) => (value: number) => ({ value, who, mix });

test.each(BIASES)("A against B: $difference ($source)", (row) => {
  const tests = row.tests.map(([value, who, mix]) => ({ value, who, mix }));
  const [a, b] = biasOf(tests, row.paired) as readonly Bias[];
  expectAsPrinted(a!.difference, row.difference);
  expectAsPrinted(a!.standardError, row.standardError);
  expectAsPrinted(a!.t, row.t);
  expectAsPrinted(a!.freedom, row.freedom);
  expect(a!.p).toBeCloseTo(2 * tCdf(-Number(row.t), Number(row.freedom)), 3);
  expect(b!.difference!).toBeLessThan(0);
});

test("with one mix and as many tests each, t is that of a reference library", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 9 }), fc.infiniteStream(air), (count, stream) => {
      const his = [...stream.take(count)];
      const others = [...stream.take(count)];
      const expected = tTestTwoSample(his, others, 0)!;
      const [bias] = biasOf([...his.map(by("A", "M")), ...others.map(by("B", "M"))]) as Bias[];
      if (Number.isFinite(expected)) expect(bias!.t).toBeCloseTo(expected, 9);
      else expect(bias!.t).toBeUndefined();
    }),
  );
});

test("paired, t is that of the differences", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(air, air), { minLength: 2, maxLength: 9 }), (samples) => {
      const differences = samples.map(([one, other]) => one - other);
      // d √n / s, a state department's manual, 5.2.6, with the mean and deviation of the library.
      const expected =
        (mean(differences) * Math.sqrt(differences.length)) / sampleStandardDeviation(differences);
      const tests = samples.flatMap(([one, other], i) => [
        by("A", `S${i}`)(one),
        by("B", `S${i}`)(other),
      ]);
      const [bias] = biasOf(tests, true) as Bias[];
      if (Number.isFinite(expected)) expect(bias!.t).toBeCloseTo(expected, 9);
      else expect(bias!.t).toBeUndefined();
    }),
  );
});

describe("technicians who test 4 mixes, made up with a known bias", () => {
  const REPEATS = 2000;
  const deviate = normalDeviates(20_260_531);
  /** Nine tests by A, eleven by the others, mixes far apart, A's scatter the larger. */
  const once = (bias: number): Bias => {
    const tests: TestBy[] = Array.from({ length: 20 }, (_, i) => {
      const who = i % 20 < 9 ? "A" : "BC"[i % 2]!;
      const mix = i % 4;
      const value = 4 + 2 * mix + (who === "A" ? bias + 0.5 * deviate() : 0.3 * deviate());
      return { value, who, mix: String(mix) };
    });
    return (biasOf(tests) as readonly Bias[])[0]!;
  };
  const unbiased = Array.from({ length: REPEATS }, () => once(0));
  const biased = Array.from({ length: REPEATS }, () => once(0.6));
  const shareBelow = (lines: readonly Bias[], p: number) =>
    lines.filter((line) => line.p! < p).length / REPEATS;

  test("the bias is found on average, and the standard error is the scatter of what is found", () => {
    const found = biased.map(({ difference }) => difference!);
    const scatter = sampleStandardDeviation(found);
    const claimed = mean(biased.map(({ standardError }) => standardError!));
    // 2,000 means of scatter 0.2 are known to 0.0045; 3 of these.
    expect(Math.abs(mean(found) - 0.6)).toBeLessThan(0.0135);
    expect(claimed / scatter).toBeGreaterThan(0.93);
    expect(claimed / scatter).toBeLessThan(1.07);
  });

  test("who has none is called biased as often as p says", () => {
    // 5 % of 2,000 is known to 0.5 %; 3 of these, and a little for Satterthwaite's approximation.
    expect(Math.abs(shareBelow(unbiased, 0.05) - 0.05)).toBeLessThan(0.02);
    expect(Math.abs(shareBelow(unbiased, 0.5) - 0.5)).toBeLessThan(0.05);
  });

  test("a bias of three standard errors is mostly found", () => {
    expect(shareBelow(biased, 0.05)).toBeGreaterThan(0.7);
  });
});

test("without scatter there is no chance to speak of, and with one test each none is known", () => {
  const alike = [5.1, 5.1, 5.1].map(by("A", "M")).concat([5.6, 5.6, 5.6].map(by("B", "M")));
  expect((biasOf(alike) as Bias[])[0]).toEqual({
    who: "A",
    tests: 3,
    difference: expect.closeTo(-0.5, 12),
    standardError: 0,
  });
  const single = [by("A", "M")(5), by("B", "M")(6)];
  expect((biasOf(single) as Bias[])[0]).toEqual({
    who: "A",
    tests: 1,
    difference: -1,
    standardError: undefined,
  });
});

test("who tests a mix alone is listed without a difference; where all do, it is said", () => {
  const tests = [by("A", "M1")(5), by("B", "M1")(6), by("C", "M2")(7)];
  expect((biasOf(tests) as Bias[])[2]).toEqual({ who: "C", tests: 0 });
  expect(biasOf([by("A", "M1")(5), by("C", "M2")(7)])).toMatchObject({ id: "nobody-to-compare" });
});
