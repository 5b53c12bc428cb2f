import { measuredFromCell } from "../../src/measure/measured";
import { QUANTITIES } from "../../src/measure/plausible";
import { systemOf } from "../../src/measure/system-of-value";
import { litres } from "../../src/measure/volume";

const PRACTICE = "common practice";

test.each([
  [72, undefined, { value: 72 }],
  [72, "°F", { value: 72, unit: "°F" }],
  ["72 °F", "°C", { value: 72, unit: "°F" }],
  ["4 1/2 in", undefined, { value: 4.5, unit: "in" }],
  ['3¼"', undefined, { value: 3.25, unit: '"' }],
  ["-2 °C", undefined, { value: -2, unit: "°C" }],
  ["0.25 ft³", undefined, { value: 0.25, unit: "ft³" }],
  ["12 km/h", undefined, { value: 12, unit: "km/h" }],
  ["145.2", "pcf", { value: 145.2, unit: "pcf" }],
])(`%j under a header with %j is %j (${PRACTICE})`, (cell, header, measured) => {
  expect(measuredFromCell(cell, header)).toEqual(measured);
});

test.each([
  ["warm", "not-a-number"],
  ["7,500 in", "comma-is-unclear"],
  [true, "not-a-number"],
])("%j is refused: %s", (cell, id) => {
  expect(measuredFromCell(cell)).toMatchObject({ id });
});

test("a blank is not a zero", () => {
  expect(measuredFromCell(" — ", "in")).toBeUndefined();
});

test.each<[number, string | undefined, string | undefined, string]>([
  [72, undefined, "us", "72 °C cannot be"],
  [22, undefined, "si", "22 °F cannot be"],
  [50, undefined, undefined, "may be either"],
  [50, "deg F", "us", "the unit says it"],
  [50, "º C", "si", "the unit says it"],
  [72, "C", undefined, "cannot be in the unit"],
  [50, "in", undefined, "not a unit of temperature"],
])("a concrete temperature of %s %s is in %s: %s", (value, unit, system) => {
  expect(systemOf([{ value, unit }, QUANTITIES.concreteTemperature])).toBe(system);
});

test("values in two systems are in none", () => {
  const density = (value: number) => [{ value }, QUANTITIES.density] as const;
  expect(systemOf(density(118), density(115))).toBe("us");
  expect(systemOf(density(1850), density(115))).toBeUndefined();
});

const BOWLS = { ft3: [0.02, 0.5], L: [0.6, 15], mL: [600, 15_000] } as const;
test.each<[number, string | undefined, number, string]>([
  [0.075, "ft³", 2.1238, "0.075 ft³ is 2.1238 L (exact to its places)"],
  [0.075, undefined, 2.1238, "can only be ft³"],
  [2.124, undefined, 2.124, "can only be L"],
  [2124, undefined, 2.124, "can only be mL"],
  [129.6, "cu in", 2.1238, "derived: 0.075 × 1,728 in³"],
  [0.007, "m3", 7, "1,000 L to the m³"],
])("a bowl of %s %s holds %s L: %s", (value, unit, expected) => {
  expect(litres({ value, unit }, BOWLS)).toBeCloseTo(expected, 4);
});

test.each([
  [50, undefined],
  [2, "cups"],
])("a bowl of %s %s cannot be told", (value, unit) => {
  expect(litres({ value, unit }, BOWLS)).toBeUndefined();
});
