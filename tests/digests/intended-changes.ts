/** A change of answers since the first version that was meant, and why. */
export interface IntendedChange {
  /** Which answers: "check", "findings" or ids of worksheet functions. */
  readonly of: readonly string[];
  /** What a sheet or a call contains where its answer may be another; "any" for all. */
  readonly tag: string;
  readonly reason: string;
}

/** Where answers may differ from those of the first version. */
export const INTENDED_CHANGES: readonly IntendedChange[] = [
  {
    of: ["findings"],
    tag: "share of one",
    reason:
      "A reading that the method refuses is said once; an air content below zero that would follow from it is not said besides.",
  },
];
