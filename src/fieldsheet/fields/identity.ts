import { field } from "./field";

/** Which test a row is of. */
export const IDENTITY_FIELDS = {
  sample: field(
    "text",
    "sample",
    `sample, sample id, sample no, sample number, test, test id, test no, test number, specimen,
      lab no, lab id, set, id`,
  ),
  load: field(
    "text",
    "load",
    `load, load no, load id, truck, truck no, ticket, ticket no, batch, batch ticket, delivery`,
  ),
  date: field("date", "date", `date, test date, date tested, date cast, date placed, day`),
  time: field("minute-of-day", "time", `time, time of day, clock time, hour`),
  mix: field(
    "text",
    "mix",
    `mix, mix id, mix no, mix design, mixture, class of concrete, concrete class`,
  ),
  method: field(
    "text",
    "method",
    `method, test method, method of test, air method, air test method, astm method`,
  ),
  repeatOf: field("text", "repeat of", `repeat of, repeats, retest of, re test of, repeat test of`),
  checkOf: field(
    "text",
    "check test of",
    `check test of, check of, check test, checks, check test for`,
  ),
} as const;
