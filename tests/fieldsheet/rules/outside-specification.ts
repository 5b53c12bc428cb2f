import type { RuleCases } from "../rule-cases";

const TRADE = "a trade article quoting ASTM C94";

export const cases: RuleCases = {
  silent: [
    [{ Low: 6, High: 6 }, "a result on a limit is within, ASTM E29 absolute method"],
    [{ Low: 6.5, Foam: 3 }, "a void test has no result"],
  ],
  speaks: [
    [
      { Low: 6.5, High: 7.5 },
      [
        [
          1,
          "",
          "The air content, 6 %, is below the low limit of 6.5 %. A check test on another portion of the same sample decides.",
        ],
      ],
      TRADE,
    ],
    [
      { Target: 4, Tolerance: "±1.5", "Reported air": 6 },
      [
        [
          1,
          "Reported air",
          "The air content, 6 %, is above the high limit of 5.5 %. A check test on another portion of the same sample decides.",
        ],
      ],
      TRADE,
    ],
  ],
};
