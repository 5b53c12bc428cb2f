import type { RuleCases } from "../rule-cases";

const TRADE = "a trade article quoting ASTM C94";

export const cases: RuleCases = {
  silent: [
    [
      [
        { Low: 7, Sample: "S-1" },
        { Low: 5, Sample: "S-1C" },
      ],
      TRADE + ": a check test is there",
    ],
    [
      [
        { Low: 7, Sample: "S-1" },
        { Low: 7, Sample: "S-1" },
      ],
      "check-test-failed says it",
    ],
    [[{ Low: 7 }, { Low: 5, "Check test of": "S-1" }], "the check test says so"],
    [{ Low: 7, "Load decision": "Rejected, sent back" }, "nothing is left to be tested"],
    [
      [
        { Low: 7, Sample: "S-1", Adjusted: "no" },
        { Low: 5, Sample: "S-1", Adjusted: "yes" },
      ],
      "adjusted and tested again, C94-98 7.3 as a trade article tells it",
    ],
    [{ Low: 7, Sample: undefined }, "samples cannot be told apart"],
  ],
  speaks: [
    [
      [{ Low: 7 }, { Low: 5 }],
      [
        [
          1,
          "Sample",
          "The result is outside the specification, and no check test of it is in the sheet. Make one at once on another portion of the same sample, or enter it below.",
        ],
      ],
      TRADE,
    ],
    [
      [
        { Low: 7, Sample: "S-1", Adjusted: "no" },
        { Low: 7, Sample: "S-1", Adjusted: "yes" },
      ],
      [
        [
          2,
          "Sample",
          "The result is outside the specification, and no check test of it is in the sheet. Make one at once on another portion of the same sample, or enter it below.",
        ],
      ],
      `a test after an adjustment is a retest, whose first failure has a check test; ${TRADE}`,
    ],
    [
      [
        { Low: 7, Sample: "S-1" },
        { Low: 7, Sample: "S-1", Foam: 3 },
      ],
      [
        [
          1,
          "Sample",
          "The result is outside the specification, and no check test of it is in the sheet. Make one at once on another portion of the same sample, or enter it below.",
        ],
      ],
      "a void test checks nothing",
    ],
  ],
};
