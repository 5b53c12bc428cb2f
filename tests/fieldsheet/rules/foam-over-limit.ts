import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ Foam: 2 }, MANUAL + ": two divisions are allowed"],
    [{ Foam: null }, "a blank is not a measurement"],
  ],
  speaks: [
    [
      { Foam: 2.25 },
      [
        [
          1,
          "Foam",
          "2.25 divisions of foam are more than the 2 allowed. The test is void: repeat it with more alcohol.",
        ],
      ],
      MANUAL,
    ],
    [
      { "Foam (divisions)": "3" },
      [
        [
          1,
          "Foam (divisions)",
          "3 divisions of foam are more than the 2 allowed. The test is void: repeat it with more alcohol.",
        ],
      ],
      MANUAL,
    ],
  ],
};
