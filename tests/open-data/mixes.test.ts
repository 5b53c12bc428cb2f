import { mean, median, sampleStandardDeviation } from "simple-statistics";
import { biasOf, type Bias } from "../../src/acceptance/bias/bias";
import {
  individualsLimits,
  type ChartLimits,
} from "../../src/acceptance/control-chart/individuals-limits";
import { judgeStrength } from "../../src/acceptance/strength/accept";
import { theoreticalDensity } from "../../src/methods/density-and-yield/theoretical-density";
import { waterCementRatio } from "../../src/methods/water-cement/water-cement";
import { AT_28_DAYS, MIXES } from "./mixes";

// Every figure here is what R 4 gave for the same file.

const first30 = AT_28_DAYS.slice(0, 30).map(({ strength }) => strength);
const ratios = MIXES.map(
  ({ water, cementitious }) => waterCementRatio({ batchWater: water, cementitious }) as number,
);

test("the file holds 1,030 mixes, 425 of them tested at 28 days", () => {
  expect([MIXES.length, AT_28_DAYS.length]).toEqual([1030, 425]);
});

test("the density of a cubic metre is the mass of its ingredients (R 4)", () => {
  const densities = MIXES.map(({ mass }) => theoreticalDensity(mass, 1, "si") as number);
  expect(mean(densities)).toBeCloseTo(2343.523398, 6);
  expect(sampleStandardDeviation(densities)).toBeCloseTo(65.36535554, 7);
  expect([Math.min(...densities), Math.max(...densities)]).toEqual([
    expect.closeTo(2194.6, 9),
    expect.closeTo(2551, 9),
  ]);
});

test("w/cm of every mix (R 4)", () => {
  expect(mean(ratios)).toBeCloseTo(0.4692328852, 10);
  expect(median(ratios)).toBeCloseTo(0.4719737627, 10);
  expect(Math.min(...ratios)).toBeCloseTo(0.2350733538, 10);
  expect(Math.max(...ratios)).toBeCloseTo(0.9, 10);
});

test.each([
  [0.4, 336],
  [0.45, 473],
  [0.5, 627],
  [0.55, 740],
])("w/cm is at most %s in %s mixes (R 4)", (most, mixes) => {
  expect(ratios.filter((ratio) => ratio <= most)).toHaveLength(mixes);
});

test("limits of an individuals chart of the first 30 strengths (R 4)", () => {
  const { lower, mean: middle, upper } = individualsLimits(first30) as ChartLimits;
  expect(middle).toBeCloseTo(54.566, 9);
  expect(lower).toBeCloseTo(27.76390902, 7);
  expect(upper).toBeCloseTo(81.36809098, 7);
});

test("the first 30 strengths against 35 MPa: 3 tests and 4 means of three fail (R 4)", () => {
  const said = judgeStrength(first30, 35, "si") as readonly string[];
  expect(said.filter((verdict) => verdict.includes("single test"))).toHaveLength(3);
  expect(said.filter((verdict) => verdict.includes("mean of three"))).toHaveLength(4);
});

test("mixes with slag beside mixes without: Welch's t test (R 4)", () => {
  const tests = AT_28_DAYS.map(({ slag, strength }) => ({
    value: strength,
    who: slag > 0 ? "slag" : "none",
    mix: "28 days",
  }));
  const [one, other] = biasOf(tests) as readonly Bias[];
  const slag = one!.who === "slag" ? one! : other!;
  const none = one!.who === "slag" ? other! : one!;
  expect([slag.tests, none.tests]).toEqual([250, 175]);
  expect(slag.difference).toBeCloseTo(7.246828571, 8);
  expect(slag.t).toBeCloseTo(5.104173065, 8);
  expect(slag.freedom).toBeCloseTo(363.5107279, 6);
  expect(slag.p! / 5.367743082e-7).toBeCloseTo(1, 8);
  expect(none.difference).toBeCloseTo(-7.246828571, 8);
  expect(none.p! / 5.367743082e-7).toBeCloseTo(1, 8);
});
