import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [[{ Foam: 0, Cups: 0 }, "from the definition of the method"]],
  speaks: [
    [
      { "First reading": -0.25 },
      [[1, "First reading", "-0.25 is below zero, which cannot be. Look at the record again."]],
      "from the definition of the method",
    ],
    [
      { "Alcohol (oz)": -16, "Rolling time (s)": -60 },
      [
        [1, "Rolling time (s)", "-60 is below zero, which cannot be. Look at the record again."],
        [1, "Alcohol (oz)", "-16 is below zero, which cannot be. Look at the record again."],
      ],
      "from the definition of the method",
    ],
  ],
};
