import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "First reading": 5.75, "Second reading": 5.5 }, MANUAL],
    [{ "Final reading": 6.1 }, "final-reading-wrong says it"],
  ],
  speaks: [
    [
      { "First reading": 6.1 },
      [
        [
          1,
          "First reading",
          "A meter reading of 6.1 % is not on the quarter-percent grid. Readings are taken to the nearest 0.25 %: 6 or 6.25.",
        ],
      ],
      MANUAL,
    ],
    [
      { "First reading": 0.0575 },
      [
        [
          1,
          "First reading",
          "A meter reading of 0.0575 looks like 5.75 % in a cell with a percentage format. Type 5.75 into a cell with a number format.",
        ],
      ],
      "derived: 0.0575 × 100 = 5.75, which is on the grid",
    ],
    [
      { "First reading": undefined, "Second reading": undefined, "Final reading": 5.9 },
      [
        [
          1,
          "Final reading",
          "A meter reading of 5.9 % is not on the quarter-percent grid. Readings are taken to the nearest 0.25 %: 5.75 or 6.",
        ],
      ],
      MANUAL,
    ],
  ],
};
