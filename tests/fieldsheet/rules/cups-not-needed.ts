import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [
      { Cups: 3, "First reading": 8.25, "Second reading": 8.5 },
      "8.25 + 3 cups is beyond 9 %, " + MANUAL,
    ],
    [
      { Cups: 1, "First reading": 8, "Second reading": 8.25 },
      "the level rose beyond 9 % when it was rolled again",
    ],
    [{ Cups: 0 }, MANUAL],
  ],
  speaks: [
    [
      { Cups: 1, "First reading": 8, "Second reading": 8 },
      [
        [
          1,
          "Cups",
          "The level stood at 9 % with the cups counted in (1), and the scale reaches 9 %. Without cups it would have been on the scale: count them again.",
        ],
      ],
      MANUAL,
    ],
  ],
};
