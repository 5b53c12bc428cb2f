import { field } from "./field";

/** What the specification asks of the air. */
export const AIR_LIMIT_FIELDS = {
  low: field("specification", "low limit"),
  high: field("specification", "high limit"),
  target: field("specification", "target air"),
  tolerance: field("tolerance", "tolerance"),
} as const;
