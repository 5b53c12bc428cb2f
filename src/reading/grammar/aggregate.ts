import { field } from "../sense";

/** The aggregate of the concrete. */
export const AGGREGATE_GRAMMAR = {
  aggregate: field("aggregate type, aggregate", "content", ""),
  aggregateSize: field(
    "aggregate size, aggregate largest, largest size, aggregate high, aggregate nominal, largest",
    "nominal size high",
    "length",
  ),
  wetSieved: field("sieved", "sample", "yes-no"),
  aggregateFactor: field("aggregate correction", "air", "percent"),
} as const;
