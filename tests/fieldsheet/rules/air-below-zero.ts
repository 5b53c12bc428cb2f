import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "First reading": 0.25, "Second reading": 0.25, "Alcohol (oz)": 40 },
      "0.25 - 0.15 is above zero",
    ],
  ],
  speaks: [
    [
      { "First reading": 0.25, "Second reading": 0.25, "Alcohol (oz)": 64 },
      [
        [
          1,
          "Alcohol (oz)",
          "The air content comes out at -0.35 %, below zero: reading 0.25 % less 0.6 % for the alcohol. Look at the reading and the alcohol again.",
        ],
      ],
      "0.25 - 0.6 = -0.35, from the definition of air content",
    ],
  ],
};
