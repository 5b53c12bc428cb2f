import { field, type FieldGrammar } from "../sense";
import type { Guard } from "../terms";

/** What a column may hold that is none of ours, though its words are of our trade. */
export const OTHER_MATTERS: readonly (readonly [Guard, FieldGrammar])[] = [
  [
    "calculation",
    field(
      "correction, correction alcohol|air|reading|meter|corrected, statistics",
      "air content reading alcohol slump temperature density cup result first second third sample test limit low high number total",
      "percent",
    ),
  ],
  [
    "other matter",
    field(
      "reading time, alcohol time, time cup",
      "first second third final initial meter start end",
      "clock duration",
    ),
  ],
  [
    "other matter",
    field(
      "slump high|low|tolerance, temperature tolerance, density tolerance, air temperature high|low, ambient high|low",
      "specified limit air ambient temperature",
      "length temperature density",
    ),
  ],
  [
    "other matter",
    field(
      "load volume, load size, load bulk, volume, size bulk, day, yield, yield volume",
      "total number cast amount",
      "bulk",
    ),
  ],
  [
    "other test",
    field(
      "strength, design-strength day, strength test, strength day, sample type, sample size",
      "test concrete number specified result amount strength day",
      "stress",
    ),
  ],
  ["running number", field("number", "", "")],
  ["status", field("in-order", "test result", "yes-no")],
  ["other matter", field("ambient", "", "")],
  [
    "other matter",
    field(
      "water by-gallon, water bulk, water weight, water material, water total, water amount, water added",
      "added amount total volume load by-gallon by-pint",
      "liquid bulk mass dosage",
    ),
  ],
  ["other matter", field("meter type", "air", "")],
];
