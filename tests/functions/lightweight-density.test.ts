import {
  densityEquilibrium,
  densityEquilibriumMeasured,
  densityOvenDry,
  densityOvenDryMeasured,
} from "../../src/functions/lightweight-density";
import * as worked from "../check-values/lightweight-density";
import { checkRefused, checkWorked } from "./one-cell";

checkWorked("DENSITY.OVENDRY", densityOvenDry, worked.DENSITY_OVENDRY);
checkWorked("DENSITY.OVENDRY.MEASURED", densityOvenDryMeasured, worked.DENSITY_OVENDRY_MEASURED);
checkWorked(
  "DENSITY.EQUILIBRIUM.MEASURED",
  densityEquilibriumMeasured,
  worked.DENSITY_EQUILIBRIUM_MEASURED,
);
checkWorked("DENSITY.EQUILIBRIUM", densityEquilibrium, worked.DENSITY_EQUILIBRIUM);

checkRefused("DENSITY.OVENDRY", densityOvenDry, [
  [[1350, 900, 611, 1], /^#VALUE! A density of 2983.2 lb\/ft³ cannot be/],
  [[1350, 900, 0, 27], /^#VALUE! Cementitious material: 0 cannot be/],
  [[1350, null, 611, 27], /^#VALUE! Coarse: nothing is given/],
]);
checkRefused("DENSITY.OVENDRY.MEASURED", densityOvenDryMeasured, [
  [[12, 11.8, 5.85], /^#VALUE! The specimen weighs 12 dried and 11.8 saturated/],
  [[10.9, 11.8, 11.8], /^#VALUE! The specimen weighs 11.8 in water and 11.8 saturated in air/],
]);
checkRefused("DENSITY.EQUILIBRIUM", densityEquilibrium, [
  [
    [1745],
    /^#VALUE! Oven-dry density: a density of 1745 lb\/ft³ cannot be. Give "si" as units if it is in kg\/m³/,
  ],
  [[110, "si"], /^#VALUE! Oven-dry density: a density of 110 kg\/m³ cannot be. Give "us"/],
]);
