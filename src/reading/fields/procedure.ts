import { field } from "./field";

/** How the volumetric test was carried out, and with what. */
export const PROCEDURE_FIELDS = {
  water: field("water"),
  alcoholStrength: field("number"),
  lateAlcohol: field("yes-or-amount"),
  inversion: field("seconds"),
  longestInversion: field("seconds"),
  roll: field("seconds"),
  meter: field("text"),
  meterCheck: field("date"),
  meterFault: field("fault"),
  bowlVolume: field("measured"),
  cupVolume: field("measured"),
} as const;
