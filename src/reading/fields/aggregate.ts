import { field } from "./field";

/** The aggregate of the concrete. */
export const AGGREGATE_FIELDS = {
  aggregate: field("text"),
  aggregateSize: field("aggregate-size"),
  wetSieved: field("yes-no"),
  aggregateFactor: field("number"),
} as const;
