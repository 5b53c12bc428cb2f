import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [[{}, "the sheet has two readings"]],
  speaks: [
    [
      [
        { "First reading": undefined, "Second reading": undefined, "Final reading": 6 },
        { "Final reading": 5 },
      ],
      [
        [
          0,
          "Final reading",
          "Final reading: the sheet records one reading a test, so it cannot be judged whether two readings agreed. Record the first and the second reading.",
        ],
      ],
      MANUAL + "; said once",
    ],
  ],
};
