import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

const SAYS = [
  "cell-error",
  "zero-or-blank",
  "not-a-date",
  "date-is-unclear",
  "not-a-time",
  "not-yes-or-no",
  "aggregate-size-cannot-be",
  "size-looks-like-date",
  "value-cannot-be",
  "value-in-other-system",
  "comma-is-unclear",
  "point-is-unclear",
  "two-ways",
  "tick-is-unclear",
  "found-or-tested",
  "nothing-above",
  "percent-as-share",
  "duration-as-clock",
  "may-sum-up",
  "not-a-number",
  "alcohol-has-no-unit",
  "alcohol-unit-unknown",
] as const;

/** A date, a time, a yes or no, a size or a name that cannot be read as one. */
export const cannotBeRead = testRule({
  id: "cannot-be-read",
  weight: "error",
  needs: [],
  anyMethod: true,
  says: SAYS,
  yieldsTo: ["not-a-number", "alcohol-unit-missing"],
  basis: "A cell that cannot be read one way only is not read at all (our own rule).",
  look: ({ unreadable }) => unreadableAs(unreadable, SAYS),
});
