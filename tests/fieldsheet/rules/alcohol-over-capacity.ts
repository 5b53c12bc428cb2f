import type { RuleCases } from "../rule-cases";

const TR = "derived from Louisiana DOTD TR 202 (2008): 1.2 x 0.075 ft³ = 5.39 pt";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol (oz)": 70 }, "16 + 70 = 86 oz of 86.2, " + TR],
    [{ "Alcohol (oz)": 84 }, "alcohol-beyond-table says it"],
  ],
  speaks: [
    [
      { "Alcohol (oz)": 72 },
      [
        [
          1,
          "Alcohol (oz)",
          "With 16 oz of water first, a top section of the least size takes 70.2 oz of alcohol, not 72 oz. Look at the amount, or see which correction belongs to the larger meter.",
        ],
      ],
      "16 + 72 = 88 oz of 86.2, " + TR,
    ],
    [
      { "Alcohol (oz)": "4.5 pt" },
      [
        [
          1,
          "Alcohol (oz)",
          "With 1 pt of water first, a top section of the least size takes 4.39 pt of alcohol, not 4.5 pt. Look at the amount, or see which correction belongs to the larger meter.",
        ],
      ],
      "1 + 4.5 = 5.5 pt of 5.39, " + TR,
    ],
    [
      { "Alcohol (oz)": "2.1 L" },
      [
        [
          1,
          "Alcohol (oz)",
          "With 0.5 L of water first, a top section of the least size takes 2.05 L of alcohol, not 2.1 L. Look at the amount, or see which correction belongs to the larger meter.",
        ],
      ],
      "0.5 + 2.1 = 2.6 L of 2.549, " + TR,
    ],
  ],
};
