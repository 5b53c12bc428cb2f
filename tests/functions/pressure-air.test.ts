import { airFullMix, airMortar, airPressure } from "../../src/functions/pressure-air";
import { AIR_FULLMIX, AIR_MORTAR, AIR_PRESSURE } from "../check-values/pressure-air";
import { checkRefused, checkWorked } from "./one-cell";

checkWorked("AIR.PRESSURE", airPressure, AIR_PRESSURE);
checkWorked("AIR.FULLMIX", airFullMix, AIR_FULLMIX);
checkWorked("AIR.MORTAR", airMortar, AIR_MORTAR);

checkRefused("AIR.PRESSURE", airPressure, [
  [[0.2, 0.5], /^#VALUE! The air content comes out below zero: gauge 0.2 % less .* 0.5 %/],
  [[5, null], /^#VALUE! Factor: nothing is given/],
  [[-1, 0], /^#VALUE! Gauge reading: -1 cannot be/],
]);
checkRefused("AIR.FULLMIX", airFullMix, [
  [[6, 20, -5], /^#VALUE! Volume of coarse aggregate: -5 cannot be/],
  [[106, 20, 5], /^#VALUE! Air of the sieved sample: 106 cannot be/],
]);
checkRefused("AIR.MORTAR", airMortar, [
  [[6, 14, 20], /^#VALUE! The volume of mortar, 20, is more than all that passes the sieve, 14/],
]);
