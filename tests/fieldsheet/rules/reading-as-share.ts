import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "First reading": 5.75 }, "a reading in percent"],
    [{ "First reading": 0 }, "the zero mark"],
  ],
  speaks: [
    [
      { "First reading": 0.0575 },
      [
        [
          1,
          "First reading",
          "A meter reading of 0.0575 looks like 5.75 % in a cell with a percentage format. Type 5.75 into a cell with a number format.",
        ],
      ],
      "derived: 0.0575 × 100 = 5.75",
    ],
    [
      { "Second reading": 0.059 },
      [
        [
          1,
          "Second reading",
          "A meter reading of 0.059 looks like 5.9 % in a cell with a percentage format. Type 5.9 into a cell with a number format.",
        ],
      ],
      "derived: 0.059 × 100 = 5.9, which is between two graduations",
    ],
  ],
};
