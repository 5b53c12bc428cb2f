import { field, wholeHeadings } from "../sense";

/** What was done with the load, and with the specimens made of the sample. */
export const DELIVERY_AND_SPECIMEN_GRAMMAR = {
  loadDecision: field("decision load, ?decision~", "of", ""),
  addedWater: field(
    "site-water, water added by-gallon, water more by-gallon, water load by-gallon",
    "added total amount volume load by-gallon by-pint more discharged",
    "mass liquid",
  ),
  waterAdditions: field("number site-water, number water added^", "added of time", ""),
  revolutionsAfterWater: field(
    "revolution after water|site-water|added",
    "added site-water of",
    "",
  ),
  adjusted: field("?material before test|sampled", "added load", "yes-no"),
  loadShare: field("share discharged sampled", "load of concrete portion", "percent"),
  samplingPlace: wholeHeadings(""),
  moulded: field("moulded time, moulded start, ?moulded~", "cast time of", "clock"),
  batchWater: wholeHeadings("mass liquid density dosage"),
  freeMoisture: wholeHeadings("mass liquid density dosage"),
  cementitious: wholeHeadings("mass density dosage"),
  waterCementLimit: wholeHeadings(""),
  exposureClass: wholeHeadings(""),
  cylinders: wholeHeadings(""),
  cylinderSize: wholeHeadings("length"),
  firstCylinder: wholeHeadings("stress"),
  secondCylinder: wholeHeadings("stress"),
  thirdCylinder: wholeHeadings("stress"),
  specifiedStrength: field(
    "design-strength, strength specified",
    "specified concrete class strength",
    "stress",
  ),
  curingLow: field(
    "curing-box low, curing-box temperature low",
    "temperature initial",
    "temperature",
  ),
  curingHigh: field(
    "curing-box high, curing-box temperature high",
    "temperature initial",
    "temperature",
  ),
} as const;
