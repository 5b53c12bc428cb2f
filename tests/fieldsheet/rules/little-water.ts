import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Water before alcohol (pt)": -1 }, "told as below zero"],
    [{ "Water before alcohol (pt)": 1 }, "common practice"],
    [{ "Water before alcohol": "500 mL" }, "common practice"],
  ],
  speaks: [
    [
      { "Water before alcohol (pt)": 0 },
      [
        [
          1,
          "Water before alcohol (pt)",
          "0 pt of water before the alcohol are less than the 1 pt that the method asks for. Look at the record again.",
        ],
      ],
      "common practice",
    ],
    [
      { "Water before alcohol (oz)": 12 },
      [
        [
          1,
          "Water before alcohol (oz)",
          "12 oz of water before the alcohol are less than the 16 oz that the method asks for. Look at the record again.",
        ],
      ],
      "1 pt is 16 oz, common practice",
    ],
  ],
};
