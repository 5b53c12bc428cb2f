import { field } from "./field";

/** When the concrete was mixed, sampled, tested and discharged. */
export const SAMPLING_FIELDS = {
  start: field("minute-of-day"),
  sampledFrom: field("minute-of-day"),
  sampledTo: field("minute-of-day"),
  batched: field("minute-of-day"),
  discharged: field("minute-of-day"),
  dischargeLimit: field("minutes"),
  revolutions: field("number"),
  revolutionLimit: field("number"),
  deliveryStandard: field("text"),
} as const;
