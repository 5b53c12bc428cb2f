import { field } from "./field";

/** What was done with the load, and with the specimens made of the sample. */
export const DELIVERY_AND_SPECIMEN_FIELDS = {
  loadDecision: field("text", "what was done with the load"),
  addedWater: field("measured", "water added on site"),
  waterAdditions: field("number", "times that water was added"),
  revolutionsAfterWater: field("number", "revolutions after adding"),
  adjusted: field("yes-no", "adjusted before the test"),
  loadShare: field("number", "share of the load discharged when sampled"),
  samplingPlace: field("text", "place of sampling"),
  moulded: field("minute-of-day", "moulding began"),
  batchWater: field("measured", "batch water"),
  freeMoisture: field("measured", "free moisture of the aggregate"),
  cementitious: field("measured", "cementitious material"),
  waterCementLimit: field("number", "most w/cm"),
  exposureClass: field("text", "exposure class"),
  cylinders: field("number", "cylinders made"),
  cylinderSize: field("text", "size of the cylinders"),
  firstCylinder: field("measured", "strength of the first cylinder"),
  secondCylinder: field("measured", "strength of the second cylinder"),
  thirdCylinder: field("measured", "strength of the third cylinder"),
  specifiedStrength: field("measured", "specified strength"),
  curingLow: field("measured", "lowest initial curing temperature"),
  curingHigh: field("measured", "highest initial curing temperature"),
} as const;
