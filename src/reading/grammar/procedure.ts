import { field, wholeHeadings } from "../sense";

/** How the volumetric test was carried out, and with what. */
export const PROCEDURE_GRAMMAR = {
  water: field(
    "water before, water first, water initial, ?water by-pint, water^",
    "alcohol cast added amount volume meter",
    "liquid",
  ),
  alcoholStrength: field("alcohol strength|share, alcohol content share", "content", "percent"),
  lateAlcohol: field(
    "alcohol late, >alcohol after zero, >after zero alcohol, >alcohol late zero, >alcohol after roll|reading|start~, alcohol more^, !>alcohol before zero",
    "added left amount volume settle meter reading more late start",
    "liquid yes-no",
  ),
  inversion: field(
    "inversion, inversion time, inversion total",
    "total amount meter first",
    "duration",
  ),
  longestInversion: field("inversion longest|high", "time total", "duration"),
  roll: field("roll, roll time", "total amount", "duration"),
  meter: field("meter number, meter serial, meter", "serial number air volumetric unit", ""),
  meterCheck: field(
    "meter calibration, meter calibration date, meter check, meter check date, ?meter test~, calibration date, calibration final, ?calibration~",
    "date air of final number test day",
    "",
  ),
  meterFault: wholeHeadings("yes-no"),
  bowlVolume: field("bowl volume, meter volume, ?bowl by-gallon|bulk", "size", "bulk liquid"),
  cupVolume: field("cup volume, cup size", "calibration", "liquid bulk"),
} as const;
