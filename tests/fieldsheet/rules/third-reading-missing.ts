import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "First reading": 5.5, "Second reading": 5.75 },
      "a concrete field-technician study guide (2026)",
    ],
    [
      { "First reading": 5.5, "Second reading": 6.25, Leak: "yes" },
      "the test is void and needs no third reading",
    ],
  ],
  speaks: [
    [
      { "First reading": 6, "Second reading": 6.75, "Third reading": null },
      [
        [
          1,
          "Third reading",
          "The second reading, 6.75 %, differs from the first, 6 %, by more than 0.25 %, and there is no third. Enter the third reading.",
        ],
      ],
      "common practice",
    ],
    [
      { "First reading": 6, "Second reading": 6.75 },
      [
        [
          1,
          "Second reading",
          "The second reading, 6.75 %, differs from the first, 6 %, by more than 0.25 %, and there is no third. Enter the third reading.",
        ],
      ],
      "common practice",
    ],
  ],
};
