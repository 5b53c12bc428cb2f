import fc from "fast-check";
import { KG_PER_LB, M3_PER_FT3 } from "../../../src/measure/conversion";
import { batchYield } from "../../../src/methods/density-and-yield/batch-yield";
import { freshDensity } from "../../../src/methods/density-and-yield/fresh-density";
import { gravimetricAir } from "../../../src/methods/density-and-yield/gravimetric-air";
import { theoreticalDensity } from "../../../src/methods/density-and-yield/theoretical-density";
import { resultOf } from "../../check-values/result-of";

const pounds = fc.double({ min: 2500, max: 4500, noNaN: true });
const density = fc.double({ min: 90, max: 160, noNaN: true });
const airShare = fc.double({ min: 0, max: 0.15, noNaN: true });

test("gravimetric air is the same from densities and from yields (ASTM C138, common practice)", () => {
  fc.assert(
    fc.property(pounds, density, airShare, (mass, fresh, air) => {
      const yielded = resultOf(batchYield(mass, fresh, "ft3"));
      const absoluteVolume = yielded * (1 - air);
      const fromYield = ((yielded - absoluteVolume) / yielded) * 100;
      const theoretical = resultOf(theoreticalDensity(mass, absoluteVolume, "us"));
      expect(resultOf(gravimetricAir(theoretical, fresh, "us"))).toBeCloseTo(fromYield, 9);
    }),
  );
});

test("G4 gives 5.1487 % both ways (derived: (26.990 − 25.60) / 26.990 × 100)", () => {
  const yielded = resultOf(batchYield(3900, 144.5, "ft3"));
  expect(((yielded - 25.6) / yielded) * 100).toBeCloseTo(5.1487, 4);
  expect(
    resultOf(gravimetricAir(resultOf(theoreticalDensity(3900, 25.6, "us")), 144.5, "us")),
  ).toBeCloseTo(5.1487, 4);
});

test("one weighing gives one density, whichever system it is noted in", () => {
  fc.assert(
    fc.property(density, fc.double({ min: 0.2, max: 1, noNaN: true }), (fresh, cubicFeet) => {
      const net = fresh * cubicFeet;
      const inUs = resultOf(freshDensity({ full: net + 9, empty: 9, volume: cubicFeet }, "us"));
      const kilograms = (mass: number) => mass * KG_PER_LB;
      const weighing = { full: kilograms(net + 9), empty: kilograms(9) };
      const litres = cubicFeet * M3_PER_FT3 * 1000;
      const inSi = resultOf(freshDensity({ ...weighing, volume: litres }, "si"));
      expect((inSi * M3_PER_FT3) / KG_PER_LB).toBeCloseTo(inUs, 6);
      expect(resultOf(freshDensity({ ...weighing, volume: litres / 1000 }, "si"))).toBeCloseTo(
        inSi,
        6,
      );
    }),
  );
});

test("a cubic yard is 27 cubic feet (exact)", () => {
  fc.assert(
    fc.property(pounds, density, (mass, fresh) => {
      expect(resultOf(batchYield(mass, fresh, "yd3")) * 27).toBeCloseTo(
        resultOf(batchYield(mass, fresh, "ft3")),
        9,
      );
    }),
  );
});
