import { evaporationRate } from "../../src/functions/evaporation";
import { EVAPORATION } from "../check-values/evaporation";
import { checkRefused, checkWorked } from "./one-cell";

checkWorked("EVAPORATION", evaporationRate, EVAPORATION);

checkRefused("EVAPORATION", evaporationRate, [
  [
    [12, 80, 50, 12],
    /^#VALUE! Concrete: a concrete temperature of 12 °F cannot be. Give "si" as units/,
  ],
  [
    [87, 80, 50, 12, "si"],
    /^#VALUE! Concrete: a concrete temperature of 87 °C cannot be. Give "us"/,
  ],
  [[87, 80, 150, 12], /^#VALUE! Humidity: 150 cannot be. Give a percentage from 0 to 100/],
  [
    [87, 80, 0.5, 12],
    /^#VALUE! Humidity: a humidity of 0.5 looks like 50 % in a cell with a percentage/,
  ],
  [[87, 80, 50, -3], /^#VALUE! Wind: a wind speed of -3 mph cannot be/],
  [[87, 80, null, 12], /^#VALUE! Humidity: nothing is given/],
]);
