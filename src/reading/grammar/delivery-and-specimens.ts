import { wholeHeadings } from "../sense";

/** What was done with the load, and with the specimens made of the sample. */
export const DELIVERY_AND_SPECIMEN_GRAMMAR = {
  loadDecision: wholeHeadings(""),
  addedWater: wholeHeadings("mass liquid"),
  waterAdditions: wholeHeadings(""),
  revolutionsAfterWater: wholeHeadings(""),
  adjusted: wholeHeadings("yes-no"),
  loadShare: wholeHeadings("percent"),
  samplingPlace: wholeHeadings(""),
  moulded: wholeHeadings("clock"),
  batchWater: wholeHeadings("mass liquid"),
  freeMoisture: wholeHeadings("mass liquid"),
  cementitious: wholeHeadings("mass"),
  waterCementLimit: wholeHeadings(""),
  exposureClass: wholeHeadings(""),
  cylinders: wholeHeadings(""),
  cylinderSize: wholeHeadings("length"),
  firstCylinder: wholeHeadings("stress"),
  secondCylinder: wholeHeadings("stress"),
  thirdCylinder: wholeHeadings("stress"),
  specifiedStrength: wholeHeadings("stress"),
  curingLow: wholeHeadings("temperature"),
  curingHigh: wholeHeadings("temperature"),
} as const;
