import { bowlVolumeFor, cupPercent, waterDensityAt } from "../../src/functions/water-and-apparatus";
import { BOWL_VOLUME, C29_ROWS, CUP_PERCENT, WATER_DENSITY } from "../check-values/water";
import { checkRefused, checkWorked, inOneCell } from "./one-cell";

checkWorked("WATER.DENSITY", waterDensityAt, WATER_DENSITY);
checkWorked("BOWL.VOLUME", bowlVolumeFor, BOWL_VOLUME);
checkWorked("CUP.PERCENT", cupPercent, CUP_PERCENT);

test.each(C29_ROWS)(
  "FRESH.WATER.DENSITY at %s °F, %s °C is near %s lb/ft³, %s kg/m³ (from memory, ASTM C29 Table 3)",
  (fahrenheit, celsius, pounds, kilograms) => {
    // 0.02 kg/m³ is how far the table's own rounding of temperature and density reaches.
    expect(
      Math.abs((inOneCell(waterDensityAt, [celsius, "si"]) as number) - kilograms),
    ).toBeLessThan(0.02);
    expect(Math.abs((inOneCell(waterDensityAt, [fahrenheit]) as number) - pounds)).toBeLessThan(
      0.00125,
    );
  },
);

checkRefused("WATER.DENSITY", waterDensityAt, [
  [
    [20],
    /^#VALUE! Temperature: a water temperature of 20 °F cannot be. Give "si" as units if it is in °C/,
  ],
  [[70, "si"], /^#VALUE! Temperature: a water temperature of 70 °C cannot be. Give "us" as units/],
  [[-5], /^#VALUE! Temperature: a water temperature of -5 °F cannot be: it lies from 32 to 104 °F/],
]);
checkRefused("BOWL.VOLUME", bowlVolumeFor, [
  [[2.1186, 21.1], /^#VALUE! Temperature: a water temperature of 21.1 °F cannot be/],
  [[0, 70], /^#VALUE! Mass of water: 0 cannot be/],
]);
checkRefused("CUP.PERCENT", cupPercent, [
  [[21.24, 0.075], /^#VALUE! A cup of 21.24 in a bowl of 0.075 .*Give both volumes in one unit/],
  [[21.24, -1], /^#VALUE! Bowl volume: -1 cannot be/],
]);
