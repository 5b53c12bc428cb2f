import { field } from "./field";

/** What the volumetric test itself gives. */
export const AIR_TEST_FIELDS = {
  first: field("number"),
  second: field("number"),
  third: field("number"),
  final: field("number"),
  cups: field("cups"),
  alcohol: field("alcohol"),
  alcoholUnit: field("text"),
  foam: field("foam"),
  settle: field("settling"),
  packed: field("fault"),
  leak: field("fault"),
  air: field("number"),
} as const;
