import type { RuleCases } from "../rule-cases";

const TRADE = "a trade article quoting ASTM C94";

export const cases: RuleCases = {
  silent: [
    [
      [
        { Low: 7, Sample: "S-1" },
        { Low: 5, Sample: "S-1C" },
      ],
      TRADE,
    ],
    [
      [
        { Low: 5, Sample: "S-1" },
        { Low: 7, Sample: "S-1" },
      ],
      "only the later result is outside",
    ],
  ],
  speaks: [
    [
      [
        { Low: 7, Sample: "S-1" },
        { Low: 7, Sample: "S-1C", "First reading": 6.25, "Second reading": 6.25 },
      ],
      [
        [
          2,
          "",
          "The check test, 6.25 %, is outside the specification as well, after 6 % at first. By the check-test rule of ASTM C94 the concrete fails, and the two are not averaged; see whether the specification names another rule.",
        ],
      ],
      TRADE,
    ],
    [
      [{ Low: 7 }, { Low: 7, "Check test of": "S-1" }],
      [
        [
          2,
          "",
          "The check test, 6 %, is outside the specification as well, after 6 % at first. By the check-test rule of ASTM C94 the concrete fails, and the two are not averaged; see whether the specification names another rule.",
        ],
      ],
      TRADE,
    ],
  ],
};
