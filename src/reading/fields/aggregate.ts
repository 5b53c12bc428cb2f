import { field } from "./field";

/** The aggregate of the concrete. */
export const AGGREGATE_FIELDS = {
  aggregate: field("text", "aggregate"),
  aggregateSize: field("aggregate-size", "aggregate size"),
  wetSieved: field("yes-no", "wet sieved"),
  aggregateFactor: field("number", "aggregate correction factor"),
} as const;
