import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "First reading": 5.75, "Second reading": 5.5 }, MANUAL],
    [{ "Final reading": 6.1 }, "final-reading-wrong says it"],
    [{ "First reading": 0.0575 }, "reading-as-share says it"],
    [{ "First reading": 9.1 }, "beyond-scale says it"],
    [{ "First reading": 6.1, Leak: "yes" }, "a void test has no result that could rest on it"],
  ],
  speaks: [
    [
      { "First reading": 6.1 },
      [
        [
          1,
          "First reading",
          "6.1 % lies between two graduations, 6 and 6.25. The scale is read to 0.25; this result rests on an estimate.",
        ],
      ],
      MANUAL,
    ],
    [
      { "First reading": 5.9, "Second reading": 5.9, "Final reading": 5.9 },
      [
        [
          1,
          "First reading",
          "5.9 % lies between two graduations, 5.75 and 6. The scale is read to 0.25; this result rests on an estimate.",
        ],
        [
          1,
          "Second reading",
          "5.9 % lies between two graduations, 5.75 and 6. The scale is read to 0.25; this result rests on an estimate.",
        ],
      ],
      MANUAL,
    ],
    [
      { "First reading": undefined, "Second reading": undefined, "Final reading": 5.9 },
      [
        [
          1,
          "Final reading",
          "5.9 % lies between two graduations, 5.75 and 6. The scale is read to 0.25; this result rests on an estimate.",
        ],
      ],
      MANUAL,
    ],
  ],
};
