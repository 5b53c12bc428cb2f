import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "First reading": 5.5, "Second reading": 5.75, "Final reading": 5.75 },
      "a concrete field-technician study guide (2026)",
    ],
    [{ "Second reading": null, "Final reading": 7 }, "the readings decide nothing yet"],
  ],
  speaks: [
    [
      { "First reading": 5.5, "Second reading": 5.75, "Final reading": 5.5 },
      [
        [
          1,
          "Final reading",
          "5.5 % is recorded as final, but the readings give 5.75 %. Correct it, and see what was worked out from it.",
        ],
      ],
      "a concrete field-technician study guide (2026)",
    ],
    [
      {
        "First reading": 5.5,
        "Second reading": 6.25,
        "Third reading": 6.25,
        "Final reading": 5.88,
      },
      [
        [
          1,
          "Final reading",
          "5.88 % is recorded as final, but the readings give 6.25 %. Correct it, and see what was worked out from it.",
        ],
      ],
      "a concrete field-technician study guide (2026)",
    ],
  ],
};
