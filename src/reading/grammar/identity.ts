import { field } from "../sense";

/** Which test a row is of. */
export const IDENTITY_GRAMMAR = {
  sample: field(
    "sample number, sample, test number, set number, lab number, sample lab, sample batch, ?set~, ?number~",
    "test set lab number air class",
    "",
  ),
  load: field(
    "load number, load, load truck~, truck number~, truck~, batch number~, batch~",
    "number mix",
    "",
  ),
  date: field(
    "date, ?test~, ?test day, ?sampled~, ?cast~, date time",
    "sample sampled cast number day place of",
    "",
  ),
  time: field("time, time day, test time, test time air, ?test~", "day", "clock"),
  mix: field(
    "mix, mix number, mix class, concrete class|number|type",
    "number class type specified",
    "",
  ),
  method: field("method, test method, air method, test type", "air number", ""),
  repeatOf: field("repeat, repeat of, repeat test", "sample number", ""),
  checkOf: field("check of, check test, check test of, check sample", "sample number", ""),
} as const;
