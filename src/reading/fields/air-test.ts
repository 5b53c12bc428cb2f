import { field } from "./field";

/** What the volumetric test itself gives. */
export const AIR_TEST_FIELDS = {
  first: field("number", "first reading"),
  second: field("number", "second reading"),
  third: field("number", "third reading"),
  final: field("number", "final reading"),
  cups: field("cups", "calibrated cups"),
  alcohol: field("alcohol", "alcohol"),
  alcoholUnit: field("text", "alcohol unit"),
  foam: field("foam", "foam"),
  settle: field("settling", "time to settle"),
  packed: field("fault", "packed concrete left"),
  leak: field("fault", "leak"),
  air: field("number", "reported air"),
} as const;
