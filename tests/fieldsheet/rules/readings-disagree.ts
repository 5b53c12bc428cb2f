import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "First reading": 5.5, "Second reading": 6.25, "Third reading": 6.25 },
      "a concrete field-technician study guide (2026)",
    ],
    [
      { "First reading": 5, "Second reading": 5.5, "Third reading": 5.75 },
      "exactly 0.25 is agreement, common practice",
    ],
    [
      { "First reading": 5, "Second reading": 5, "Third reading": 6 },
      "the second is final, so the third is not looked at, common practice",
    ],
  ],
  speaks: [
    [
      { "First reading": 5, "Second reading": 5.5, "Third reading": 6 },
      [
        [
          1,
          "Third reading",
          "The third reading, 6 %, differs from the second, 5.5 %, by more than 0.25 %. The test is void: repeat it with more alcohol.",
        ],
      ],
      "derived from the rule of the third reading, common practice",
    ],
  ],
};
