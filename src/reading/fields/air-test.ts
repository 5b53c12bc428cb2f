import { field } from "./field";

/** What the volumetric test itself gives. */
export const AIR_TEST_FIELDS = {
  first: field("number", "first reading"),
  second: field("number", "second reading"),
  third: field("number", "third reading"),
  final: field("number", "final reading"),
  cups: field("number", "calibrated cups"),
  alcohol: field("alcohol", "alcohol"),
  alcoholUnit: field("text", "alcohol unit"),
  foam: field("number", "foam"),
  settle: field("minutes", "time to settle"),
  packed: field("yes-no", "packed concrete left"),
  leak: field("yes-no", "leak"),
  air: field("number", "reported air"),
} as const;
