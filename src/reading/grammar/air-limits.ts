import { field } from "../sense";

/** What the specification asks of the air. */
export const AIR_LIMIT_GRAMMAR = {
  low: field(
    "air low, limit^, limit low, specified low, air specified low",
    "limit content specified allowed",
    "percent",
  ),
  high: field(
    "air high, limit^, limit high, specified high, air specified high",
    "limit content specified allowed",
    "percent",
  ),
  target: field("air specified", "content limit", "percent"),
  tolerance: field("tolerance, air tolerance", "specified limit content allowed", "percent"),
} as const;
