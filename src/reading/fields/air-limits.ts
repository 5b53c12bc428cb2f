import { field } from "./field";

/** What the specification asks of the air. */
export const AIR_LIMIT_FIELDS = {
  low: field("specification"),
  high: field("specification"),
  target: field("specification"),
  tolerance: field("tolerance"),
} as const;
