import { field } from "./field";

/** When the concrete was mixed, sampled, tested and discharged. */
export const SAMPLING_FIELDS = {
  start: field("minute-of-day", "test start"),
  sampledFrom: field("minute-of-day", "sampled from"),
  sampledTo: field("minute-of-day", "sampled to"),
  batched: field("minute-of-day", "time batched"),
  discharged: field("minute-of-day", "time discharged"),
  dischargeLimit: field("minutes", "time allowed for discharge"),
  revolutions: field("number", "revolutions"),
  revolutionLimit: field("number", "revolutions allowed"),
  deliveryStandard: field("text", "delivery standard"),
} as const;
