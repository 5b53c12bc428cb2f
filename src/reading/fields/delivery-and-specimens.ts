import { field } from "./field";

/** What was done with the load, and with the specimens made of the sample. */
export const DELIVERY_AND_SPECIMEN_FIELDS = {
  loadDecision: field("text"),
  addedWater: field("measured"),
  waterAdditions: field("number"),
  revolutionsAfterWater: field("number"),
  adjusted: field("yes-no"),
  loadShare: field("number"),
  samplingPlace: field("text"),
  moulded: field("minute-of-day"),
  batchWater: field("measured"),
  freeMoisture: field("measured"),
  cementitious: field("measured"),
  waterCementLimit: field("number"),
  exposureClass: field("text"),
  cylinders: field("number"),
  cylinderSize: field("text"),
  firstCylinder: field("measured"),
  secondCylinder: field("measured"),
  thirdCylinder: field("measured"),
  specifiedStrength: field("measured"),
  curingLow: field("measured"),
  curingHigh: field("measured"),
} as const;
