import { wholeHeadings } from "../sense";

/** What was done with the load, and with the specimens made of the sample. */
export const DELIVERY_AND_SPECIMEN_GRAMMAR = {
  loadDecision: wholeHeadings(""),
  addedWater: wholeHeadings(""),
  waterAdditions: wholeHeadings(""),
  revolutionsAfterWater: wholeHeadings(""),
  adjusted: wholeHeadings("yes-no"),
  loadShare: wholeHeadings("percent"),
  samplingPlace: wholeHeadings(""),
  moulded: wholeHeadings("clock"),
  specifiedStrength: wholeHeadings("stress"),
  curingLow: wholeHeadings("temperature"),
  curingHigh: wholeHeadings("temperature"),
} as const;
