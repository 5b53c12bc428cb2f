import { field } from "./field";

/** Which test a row is of. */
export const IDENTITY_FIELDS = {
  sample: field("text", "sample"),
  load: field("text", "load"),
  date: field("date", "date"),
  time: field("minute-of-day", "time"),
  mix: field("text", "mix"),
  method: field("text", "method"),
  repeatOf: field("text", "repeat of"),
  checkOf: field("text", "check test of"),
} as const;
