import { field } from "./field";

/** The aggregate of the concrete. */
export const AGGREGATE_FIELDS = {
  aggregate: field(
    "text",
    "aggregate",
    `aggregate, aggregate type, type of aggregate, kind of aggregate, coarse aggregate,
      coarse aggregate type`,
  ),
  aggregateSize: field(
    "aggregate-size",
    "aggregate size",
    `aggregate size, agg size, coarse aggregate size, coarse aggregate maximum size,
      coarse aggregate max size, nominal maximum size, nominal maximum aggregate size,
      nominal max size, nominal max aggregate size, nominal maximum aggregate,
      maximum aggregate size, max aggregate size, max aggregate, maximum size of aggregate,
      largest aggregate, largest size, top size, nmas, nms`,
  ),
  wetSieved: field(
    "yes-no",
    "wet sieved",
    `wet sieved, wet sieving, wet sieved sample, sieved, sample sieved`,
  ),
  aggregateFactor: field(
    "number",
    "aggregate correction factor",
    `aggregate correction factor, aggregate factor, aggregate correction, agg correction factor,
      agg corr factor, acf`,
  ),
} as const;
