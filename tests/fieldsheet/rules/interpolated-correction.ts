import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol (oz)": 48 }, "a row of ASTM C173 Table 1"],
    [{ "Alcohol (oz)": 36 }, "nothing is subtracted below 40 oz, ASTM C173 Table 1"],
    [{ "Alcohol (oz)": 56, Foam: 3 }, "a void test has no result"],
  ],
  speaks: [
    [
      { "Alcohol (oz)": 56 },
      [
        [
          1,
          "Alcohol (oz)",
          "56 oz lies between two rows of the correction table. 0.45 % was interpolated.",
        ],
      ],
      "half-way between 0.3 at 48 oz and 0.6 at 64 oz, ASTM C173 Table 1",
    ],
  ],
};
