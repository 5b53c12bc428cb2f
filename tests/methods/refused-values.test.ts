import type { Issue } from "../../src/measure/issue";
import { shareOfBowl } from "../../src/methods/apparatus/share-of-bowl";
import { expectedAir, expectedDensity } from "../../src/methods/density-and-yield/density-from-air";
import { freshDensity } from "../../src/methods/density-and-yield/fresh-density";
import { gravimetricAir } from "../../src/methods/density-and-yield/gravimetric-air";
import { relativeYield } from "../../src/methods/density-and-yield/relative-yield";
import { theoreticalDensity } from "../../src/methods/density-and-yield/theoretical-density";
import { evaporation } from "../../src/methods/evaporation/evaporation";
import { calculatedOvenDryDensity } from "../../src/methods/lightweight-density/calculated-oven-dry";
import {
  measuredEquilibriumDensity,
  measuredOvenDryDensity,
} from "../../src/methods/lightweight-density/measured-on-specimen";
import { pressureAir } from "../../src/methods/pressure-air/pressure-air";
import { fullMixtureAir, mortarAir } from "../../src/methods/pressure-air/sieved-sample";
import { alcoholCorrection } from "../../src/methods/volumetric-air/alcohol-correction";
import { notACount } from "../../src/methods/volumetric-air/calibrated-cups";
import { correctedAir } from "../../src/methods/volumetric-air/corrected-air";
import { settledMinute } from "../../src/methods/volumetric-air/settled-level";
import { waterCementRatio } from "../../src/methods/water-cement/water-cement";

/*
 * What a method refuses, at what place and with which values, so that the sentence can name both. A mass, a
 * volume, a share below or at 0 cannot be, whatever the standard ("common practice").
 */

const batch = { fine: 1200, coarse: 900, cementitious: 600, volume: 27 };
const masses = { dried: 6, saturated: 6.5, suspended: 3 };
const weather = { concrete: 80, air: 80, humidity: 50, wind: 5 };
const trial = { density: 115, air: 6 };

test.each<[value: () => object | number | undefined, id: string, place: string, values: object]>([
  [() => shareOfBowl(0, 10), "not-above-zero", "cup volume", { value: 0 }],
  [() => shareOfBowl(1, 0), "not-above-zero", "bowl volume", { value: 0 }],
  [
    () => expectedDensity({ density: 0, air: 6 }, 5),
    "not-above-zero",
    "reference density",
    { value: 0 },
  ],
  [
    () => expectedDensity({ density: 115, air: 100 }, 5),
    "air-takes-all",
    "reference air",
    { air: 100 },
  ],
  [() => expectedDensity(trial, 100), "air-takes-all", "air", { air: 100 }],
  [() => expectedDensity(trial, -1), "air-takes-all", "air", { air: -1 }],
  [() => expectedAir(trial, 0), "not-above-zero", "density", { value: 0 }],
  [
    () => expectedAir(trial, 130),
    "density-not-by-air",
    "density",
    { density: 130, reference: 115 },
  ],
  [
    () => freshDensity({ full: 8, empty: 8, volume: 0.25 }, "us"),
    "full-not-heavier",
    "",
    { full: 8, empty: 8 },
  ],
  [
    () => freshDensity({ full: 8, empty: -1, volume: 0.25 }, "us"),
    "below-zero",
    "mass of the empty measure",
    { value: -1 },
  ],
  [
    () => freshDensity({ full: 40, empty: 8, volume: 0 }, "us"),
    "not-above-zero",
    "volume of the measure",
    { value: 0 },
  ],
  [() => relativeYield(0, 27), "not-above-zero", "yield", { value: 0 }],
  [() => relativeYield(27, 0), "not-above-zero", "design volume", { value: 0 }],
  [() => relativeYield(1, 27), "relative-yield-cannot-be", "", { yielded: 1, design: 27 }],
  [() => theoreticalDensity(0, 25, "us"), "not-above-zero", "mass", { value: 0 }],
  [() => theoreticalDensity(3000, 0, "us"), "not-above-zero", "absolute volume", { value: 0 }],
  [
    () => calculatedOvenDryDensity({ ...batch, fine: -1 }, "us"),
    "below-zero",
    "dry fine aggregate",
    { value: -1 },
  ],
  [
    () => calculatedOvenDryDensity({ ...batch, coarse: -1 }, "us"),
    "below-zero",
    "dry coarse aggregate",
    { value: -1 },
  ],
  [
    () => calculatedOvenDryDensity({ ...batch, cementitious: 0 }, "us"),
    "not-above-zero",
    "cementitious material",
    { value: 0 },
  ],
  [
    () => calculatedOvenDryDensity({ ...batch, volume: 0 }, "us"),
    "not-above-zero",
    "volume",
    { value: 0 },
  ],
  [
    () => measuredOvenDryDensity({ ...masses, dried: 0 }, "us"),
    "not-above-zero",
    "mass dried",
    { value: 0 },
  ],
  [
    () => measuredOvenDryDensity({ ...masses, suspended: 0 }, "us"),
    "not-above-zero",
    "mass in water",
    { value: 0 },
  ],
  [
    () => measuredEquilibriumDensity({ ...masses, dried: 7 }, "us"),
    "dried-over-saturated",
    "",
    { dried: 7, saturated: 6.5 },
  ],
  [() => pressureAir(-1, 0), "not-a-percentage", "gauge reading", { value: -1 }],
  [() => pressureAir(5, 101), "not-a-percentage", "aggregate correction factor", { value: 101 }],
  [() => pressureAir(0.5, 0.6), "pressure-air-below-zero", "", { gauge: 0.5, factor: 0.6 }],
  [() => fullMixtureAir(-1, 10, 5), "not-a-percentage", "air of the sieved sample", { value: -1 }],
  [() => fullMixtureAir(5, 0, 5), "not-above-zero", "volume that passes the sieve", { value: 0 }],
  [() => fullMixtureAir(5, 10, -1), "below-zero", "volume of coarse aggregate", { value: -1 }],
  [() => mortarAir(101, 10, 5), "not-a-percentage", "air of the sieved sample", { value: 101 }],
  [() => mortarAir(5, 0, 5), "not-above-zero", "volume that passes the sieve", { value: 0 }],
  [() => mortarAir(5, 10, 0), "not-above-zero", "volume of mortar", { value: 0 }],
  [() => mortarAir(5, 10, 11), "mortar-over-passing", "", { mortar: 11, passing: 10 }],
  [() => alcoholCorrection({ amount: -1, unit: "oz" }), "alcohol-negative", "", { value: -1 }],
  [
    () => alcoholCorrection({ amount: 81, unit: "oz" }),
    "alcohol-beyond-table",
    "",
    { value: 81, unit: "oz", end: 80 },
  ],
  [() => notACount(-1), "cups-negative", "", { value: -1 }],
  [() => settledMinute([{ minute: -1, level: 5 }]), "minutes-negative", "", { value: -1 }],
  [
    () =>
      settledMinute([
        { minute: 2, level: 5 },
        { minute: 2, level: 5 },
      ]),
    "minutes-out-of-order",
    "",
    { value: 2, before: 2 },
  ],
  [
    () => waterCementRatio({ batchWater: -1, cementitious: 600 }),
    "below-zero",
    "batch water",
    { value: -1 },
  ],
  [
    () => waterCementRatio({ batchWater: 250, addedWater: -1, cementitious: 600 }),
    "below-zero",
    "added water",
    { value: -1 },
  ],
  [
    () => waterCementRatio({ batchWater: 250, cementitious: 0 }),
    "not-above-zero",
    "cementitious",
    { value: 0 },
  ],
  [
    () => waterCementRatio({ batchWater: 250, cementitious: 100 }),
    "water-cement-cannot-be",
    "",
    { ratio: 2.5 },
  ],
])("%#: %s is refused as %s in “%s”", (value, id, place, values) => {
  expect(value()).toMatchObject({ id, place, values });
});

test.each<[what: string, refuse: () => object | number, place: string]>([
  [
    "a theoretical density no heavier than the measured one",
    () => gravimetricAir(150, 15, "us"),
    "density",
  ],
  ["air of 400 °F", () => evaporation({ ...weather, air: 400 }, "us"), "air"],
  ["a reading of 10", () => correctedAir({ reading: 10 }), "reading"],
  ["half a cup", () => correctedAir({ reading: 5, cups: 0.5 }), "cups"],
])("%s is refused in its place", (_, refuse, place) => {
  expect(refuse()).toMatchObject({ place });
});

test("air below zero names what was taken from what (1.00 − 0.90 − more cannot be, by hand)", () => {
  const refused = correctedAir({ reading: 0.5, alcohol: { amount: 80, unit: "oz" } });
  expect(refused).toMatchObject({
    id: "air-below-zero",
    values: { reading: 0.5, subtract: 0.9, air: -0.4 },
  });
});

test.each<[value: () => number | Issue, expected: number, source: string]>([
  // The very ends of what can be are still taken.
  [() => relativeYield(27, 27), 1, "by definition"],
  [
    () => waterCementRatio({ batchWater: 90, cementitious: 600 }),
    0.15,
    "the least that is taken, our own choice",
  ],
  [
    () => waterCementRatio({ batchWater: 1200, cementitious: 600 }),
    2,
    "the most that is taken, our own choice",
  ],
  [() => pressureAir(0.6, 0.6), 0, "0.6 − 0.6"],
  [() => expectedAir(trial, (115 * 100) / 94), 0, "the density without air, 115 / 0.94"],
  [() => expectedDensity(trial, 0), (115 * 100) / 94, "115 / 0.94"],
  // A dry specimen may weigh as much as the saturated one.
  [
    () => measuredOvenDryDensity({ dried: 6.5, saturated: 6.5, suspended: 3 }, "us"),
    (6.5 * 62.3) / 3.5,
    "by hand",
  ],
])("%#: %s is %d (%s)", (value, expected) => {
  expect(value()).toBeCloseTo(expected, 9);
});
