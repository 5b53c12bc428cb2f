import { field } from "./field";

/** How the volumetric test was carried out, and with what. */
export const PROCEDURE_FIELDS = {
  water: field("water", "water before alcohol"),
  alcoholStrength: field("number", "alcohol strength"),
  lateAlcohol: field("yes-or-amount", "alcohol after zeroing"),
  inversion: field("seconds", "inversion time"),
  longestInversion: field("seconds", "longest inversion"),
  roll: field("seconds", "rolling time"),
  meter: field("text", "meter"),
  meterCheck: field("date", "meter checked"),
  meterFault: field("fault", "meter failed its check"),
  bowlVolume: field("measured", "bowl volume"),
  cupVolume: field("measured", "cup volume"),
} as const;
