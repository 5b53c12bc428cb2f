import {
  airGravimetric,
  batchYieldFor,
  cementContentFor,
  density,
  densityTheoretical,
  relativeYieldFor,
} from "../../src/functions/density-and-yield";
import * as worked from "../check-values/density-and-yield";
import { checkRefused, checkWorked } from "./one-cell";

checkWorked("DENSITY", density, worked.DENSITY);
checkWorked("BATCH.YIELD", batchYieldFor, worked.BATCH_YIELD);
checkWorked("RELATIVE.YIELD", relativeYieldFor, worked.RELATIVE_YIELD);
checkWorked("DENSITY.THEORETICAL", densityTheoretical, worked.DENSITY_THEORETICAL);
checkWorked("AIR.GRAVIMETRIC", airGravimetric, worked.AIR_GRAVIMETRIC);
checkWorked("CEMENT.CONTENT", cementContentFor, worked.CEMENT_CONTENT);

checkRefused("DENSITY", density, [
  [[18.6, 54.1, 0.25], /^#VALUE! The full measure, 18.6, is not heavier than the empty one, 54.1/],
  [[54.1, 18.6, 0], /^#VALUE! Volume of the measure: 0 cannot be/],
  [[54.1, -1, 0.25], /^#VALUE! Mass of the empty measure: -1 cannot be/],
  [[24.62, 8.3, 0.00701], /^#VALUE! A density of 2328.1 lb\/ft³ cannot be.*"si".*kg\/m³/],
  [[54.1, 18.6, 0.25, "si"], /^#VALUE! A density of 142 kg\/m³ cannot be.*"us".*lb\/ft³/],
  [[54.1, 18.6, 0.25, "metric"], /^#VALUE! Units: “metric” is not a system of units/],
  [[54.1, "full", 0.25], /^#VALUE! Empty: “full” is not a number/],
  [[54.1, null, 0.25], /^#VALUE! Empty: nothing is given/],
]);
checkRefused("BATCH.YIELD", batchYieldFor, [
  [[3900, 1745], /^#VALUE! Density: a density of 1745 lb\/ft³ cannot be. Give "si" as units/],
  [[2340, 145, "m3"], /^#VALUE! Density: a density of 145 kg\/m³ cannot be. Give "us" as units/],
  [[0, 145], /^#VALUE! Mass of the batch: 0 cannot be/],
  [[3900, 145, "gal"], /^#VALUE! Unit: “gal” is not a unit of yield. Give "ft3", "yd3" or "m3"/],
]);
checkRefused("RELATIVE.YIELD", relativeYieldFor, [
  [[26.99, 1], /^#VALUE! A yield of 26.99 for a design volume of 1 cannot be/],
  [[1, 0], /^#VALUE! Design volume: 0 cannot be/],
]);
checkRefused("DENSITY.THEORETICAL", densityTheoretical, [
  [[2390, 0.94], /^#VALUE! A density of 2542.55 lb\/ft³ cannot be/],
  [[3900, -25.6], /^#VALUE! Absolute volume: -25.6 cannot be/],
]);
checkRefused("AIR.GRAVIMETRIC", airGravimetric, [
  [[141, 150], /^#VALUE! The density, 150, lies above the theoretical density, 141/],
  [[2500, 2350], /^#VALUE! Theoretical density: a density of 2500 lb\/ft³ cannot be/],
]);
checkRefused("CEMENT.CONTENT", cementContentFor, [
  [[564, 0], /^#VALUE! Yield: 0 cannot be/],
  [[-564, 1], /^#VALUE! Mass of cement: -564 cannot be/],
]);
