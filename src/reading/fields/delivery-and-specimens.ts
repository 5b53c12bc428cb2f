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
  specifiedStrength: field("measured", "specified strength"),
  curingLow: field("measured", "lowest initial curing temperature"),
  curingHigh: field("measured", "highest initial curing temperature"),
} as const;
