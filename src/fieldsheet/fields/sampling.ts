import { field } from "./field";

/** When the concrete was mixed, sampled, tested and discharged. */
export const SAMPLING_FIELDS = {
  start: field(
    "minute-of-day",
    "test start",
    `test start, test started, start of test, time of test, test time, time tested, time started,
      started, air test started, start time`,
  ),
  sampledFrom: field(
    "minute-of-day",
    "sampled from",
    `sampled from, sampling start, sampling started, start of sampling, sampling from,
      first portion, first portion taken, first portion at`,
  ),
  sampledTo: field(
    "minute-of-day",
    "sampled to",
    `sampled to, sampling end, sampling ended, end of sampling, sampling finished, sampling to,
      last portion, last portion taken, last portion at, final portion, sampled at, time sampled,
      sampling time, sample time, sampled`,
  ),
  batched: field(
    "minute-of-day",
    "time batched",
    `time batched, batch time, batched, batched at, time of batching, loaded at, time loaded,
      mixing began`,
  ),
  discharged: field(
    "minute-of-day",
    "time discharged",
    `time discharged, discharge time, discharged, discharged at, discharge completed,
      discharge complete, end of discharge, unloaded at, time unloaded`,
  ),
  dischargeLimit: field(
    "minutes",
    "time allowed for discharge",
    `time allowed for discharge, discharge limit, discharge within, time limit for discharge`,
  ),
} as const;
