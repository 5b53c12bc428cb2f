import { field } from "../sense";

/** When the concrete was mixed, sampled, tested and discharged. */
export const SAMPLING_GRAMMAR = {
  start: field("test start, test start time, air start, test time~", "time air meter of", "clock"),
  sampledFrom: field(
    "sampled start, portion first, sampled time~, sample time~, sampled~",
    "time sample portion",
    "clock",
  ),
  sampledTo: field(
    "sampled end, portion final, sampled time end",
    "time sample portion end",
    "clock",
  ),
  batched: field(
    "batched, batched time, load time, load start",
    "time load end start batch of",
    "clock",
  ),
  discharged: field(
    "discharged, discharged time, discharged end, ?cast end",
    "time load end",
    "clock",
  ),
  dischargeLimit: field("discharged limit|allowed|high", "time allowed limit", "duration"),
  revolutions: field("revolution", "total number amount load truck discharged", ""),
  revolutionLimit: field("revolution allowed|limit|high", "number allowed limit", ""),
  deliveryStandard: field("load method, load specified", "discharged", ""),
} as const;
