import { LB_FT3_PER_KG_M3 } from "../../../src/measure/conversion";
import { waterDensity } from "../../../src/methods/water-density/water-density";
import { resultOf } from "../../check-values/result-of";

/** Kell 1975, °C to kg/m³; coefficients from memory. On the temperature scale of 1968. */
function kell(t: number): number {
  const above =
    999.83952 +
    16.945176 * t -
    7.9870401e-3 * t ** 2 -
    46.170461e-6 * t ** 3 +
    105.56302e-9 * t ** 4 -
    280.54253e-12 * t ** 5;
  return above / (1 + 16.87985e-3 * t);
}

const everyHalfDegree = Array.from({ length: 81 }, (_, i) => i / 2);

test("keeps within 0.005 kg/m³ of Kell 1975 from 0 to 40 °C (coefficients from memory)", () => {
  for (const t of everyHalfDegree) {
    expect(Math.abs(resultOf(waterDensity(t, "si")) - kell(t))).toBeLessThan(0.005);
  }
});

test("is greatest near 3.98 °C (Tanaka et al. 2001: 999.97495 kg/m³ at 3.983 °C)", () => {
  expect(resultOf(waterDensity(3.983035, "si"))).toBeCloseTo(999.97495, 9);
  for (const t of everyHalfDegree) {
    expect(resultOf(waterDensity(t, "si"))).toBeLessThanOrEqual(999.97495);
  }
});

test("gives one density in both systems (1 kg/m³ = 0.0624279606 lb/ft³, exact to its places)", () => {
  expect(LB_FT3_PER_KG_M3).toBeCloseTo(0.0624279606, 10);
  for (const t of everyHalfDegree) {
    const fahrenheit = t * 1.8 + 32;
    expect(resultOf(waterDensity(fahrenheit, "us"))).toBeCloseTo(
      resultOf(waterDensity(t, "si")) * 0.0624279606,
      6,
    );
  }
});
