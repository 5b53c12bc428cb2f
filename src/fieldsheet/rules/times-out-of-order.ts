import { writtenTime } from "../../measure/time-of-day";
import { minutesBetween } from "../../methods/sampling/sampling-times";
import { fieldName } from "../../reading/fields";
import { testRule } from "../rule";

const IN_ORDER = ["sampledFrom", "sampledTo", "start"] as const;

/** Something is said to have happened before what comes first. */
export const timesOutOfOrder = testRule({
  id: "times-out-of-order",
  weight: "error",
  needs: [],
  needsOneOf: IN_ORDER,
  anyMethod: true,
  says: ["times-out-of-order"],
  basis:
    "A sample is taken from its first portion to its last, and only then tested (from the definition of a sample).",
  look({ values }) {
    const told = IN_ORDER.flatMap((field) => {
      const minute = values[field];
      return minute === undefined ? [] : [{ field, minute }];
    });
    return told.slice(1).flatMap(({ field, minute }, i) => {
      const before = told[i]!;
      if (minutesBetween(before.minute, minute) >= 0) return [];
      const what = fieldName(before.field);
      const times = { time: writtenTime(minute), before: writtenTime(before.minute) };
      return [{ field, values: { ...times, what } }];
    });
  },
});
