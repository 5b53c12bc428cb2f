import { field } from "./field";

/** How the volumetric test was carried out, and with what. */
export const PROCEDURE_FIELDS = {
  water: field(
    "water",
    "water before alcohol",
    `water before alcohol, water first, water added first, initial water, water in meter,
      first water`,
  ),
  alcoholStrength: field(
    "number",
    "alcohol strength",
    `alcohol strength, strength of alcohol, alcohol concentration, ipa strength,
      ipa concentration`,
  ),
  lateAlcohol: field(
    "yes-or-amount",
    "alcohol after zeroing",
    `alcohol after zeroing, alcohol added after zeroing, alcohol added after zero,
      alcohol after zero, alcohol added late, alcohol added later, late alcohol, extra alcohol,
      ipa after zeroing`,
  ),
  inversion: field(
    "seconds",
    "inversion time",
    `inversion time, total inversion time, total inversion, inversion total, inversion,
      inversion in all, inverted for, time inverted, time inverting, inverting time,
      inversion seconds`,
  ),
  longestInversion: field(
    "seconds",
    "longest inversion",
    `longest inversion, longest time inverted, longest time upside down,
      longest single inversion, max inversion, maximum inversion, upside down at a time,
      inverted at a time`,
  ),
  roll: field(
    "seconds",
    "rolling time",
    `rolling time, roll time, time rolling, time rolled, rolled for, rolling, roll, roll seconds,
      rolling seconds`,
  ),
  meter: field(
    "text",
    "meter",
    `meter, meter id, meter no, meter number, air meter, air meter no, air meter id,
      meter serial, meter serial no`,
  ),
  meterCheck: field(
    "date",
    "meter checked",
    `meter checked, meter check, meter check date, meter checked on, date of meter check,
      last meter check, meter calibration, meter calibrated, meter calibration date,
      date calibrated, calibration date, last calibration, last calibrated, calibrated,
      meter standardized, meter standardised, standardization date, standardisation date`,
  ),
  bowlVolume: field(
    "measured",
    "bowl volume",
    `bowl volume, volume of bowl, bowl capacity, meter bowl volume, volume of the bowl`,
  ),
  cupVolume: field(
    "measured",
    "cup volume",
    `cup volume, volume of cup, calibrated cup volume, volume of calibrated cup, cup capacity`,
  ),
} as const;
