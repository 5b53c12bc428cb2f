import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [[{ Cups: 24 }, "derived: 6 + 24 is 30, the limit itself"]],
  speaks: [
    [
      { Cups: 40 },
      [
        [
          1,
          "Cups",
          "With 40 calibrated cups the air content comes out at 46 %, and no concrete that is tested so holds more than 30 %. Count the cups again; each is 1.00 %.",
        ],
      ],
      "derived: 6 + 40 × 1.00; the limit is our own",
    ],
  ],
};
