import { field } from "./field";

/** What the specification asks of the air. */
export const AIR_LIMIT_FIELDS = {
  low: field("number", "low limit"),
  high: field("number", "high limit"),
  target: field("number", "target air"),
  tolerance: field("tolerance", "tolerance"),
} as const;
