import { mostWaterCement } from "../../../src/acceptance/water-cement/exposure-limit";
import { waterCementRatio } from "../../../src/methods/water-cement/water-cement";
import { MOST_WATER_CEMENT_ROWS, WATER_CEMENT } from "../../check-values/decisions";
import { expectAsPrinted } from "../../check-values/worked";

test.each(WATER_CEMENT)("water %s + %s + %s over %s is %s (%s)", (...row) => {
  const [batchWater, freeMoisture, addedWater, cementitious, printed] = row;
  const mix = { batchWater, freeMoisture, addedWater, cementitious };
  expectAsPrinted(waterCementRatio(mix), printed);
});

test.each([
  [{ batchWater: -1, cementitious: 611 }, "below-zero"],
  [{ batchWater: 250, addedWater: -5, cementitious: 611 }, "below-zero"],
  [{ batchWater: 250, cementitious: 0 }, "not-above-zero"],
  [{ batchWater: 2500, cementitious: 611 }, "water-cement-cannot-be"],
  [{ batchWater: 1e300, cementitious: 1e-10 }, "result-beyond-a-cell"],
])("%j is said to be wrong", (mix, id) => {
  expect(waterCementRatio(mix)).toMatchObject({ id });
});

test.each(MOST_WATER_CEMENT_ROWS)("%s allows %s (%s)", (classes, most) => {
  expect(mostWaterCement(classes)).toBe(most);
});

test.each(["F0", "exposed", "F2, X9", ""])("“%s” has no limit of w/cm", (classes) => {
  expect(mostWaterCement(classes)).toMatchObject({ id: "exposure-without-limit" });
});
