import { field } from "./field";

/** Which test a row is of. */
export const IDENTITY_FIELDS = {
  sample: field("text"),
  load: field("text"),
  date: field("date"),
  time: field("minute-of-day"),
  mix: field("text"),
  method: field("text"),
  repeatOf: field("text"),
  checkOf: field("text"),
} as const;
