import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Cups: 2, "First reading": 8, "Second reading": 8 }, "from memory, ASTM C173 procedure"],
  ],
  speaks: [
    [
      { Cups: 1.5 },
      [
        [
          1,
          "Cups",
          "1.5 is not a whole number of calibrated cups. Only full cups count, each 1.00 %.",
        ],
      ],
      "from memory, ASTM C173 procedure",
    ],
  ],
};
