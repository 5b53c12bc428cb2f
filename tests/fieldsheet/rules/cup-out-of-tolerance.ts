import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "Cup volume (mL)": 21.24, "Bowl volume (ft³)": 0.075 },
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %",
    ],
    [
      { "Cup volume (mL)": 20.38, "Bowl volume (ft³)": 0.075 },
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %; 20.38 / 2,123.76 is 0.96",
    ],
    [
      { "Cup volume (mL)": 22.08, "Bowl volume (L)": 2.1238 },
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %",
    ],
  ],
  speaks: [
    [
      { "Cup volume (mL)": 22.2, "Bowl volume (ft³)": 0.075 },
      [
        [
          1,
          "Cup volume (mL)",
          "The calibrated cup holds 1.05 % of the bowl; 0.96 to 1.04 % are allowed. Each cup is counted as 1.00 %: standardise it again.",
        ],
      ],
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %; 22.2 / 2,123.76",
    ],
    [
      { "Cup volume": 20, "Bowl volume": 2124 },
      [
        [
          1,
          "Cup volume",
          "The calibrated cup holds 0.94 % of the bowl; 0.96 to 1.04 % are allowed. Each cup is counted as 1.00 %: standardise it again.",
        ],
      ],
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %; 20 / 2,124",
    ],
    [
      [
        { "Cup volume (mL)": 20, "Bowl volume (ft³)": 0.074 },
        { "Cup volume (mL)": 20, "Bowl volume (ft³)": 0.074 },
        { "Cup volume (mL)": 20, "Bowl volume (ft³)": 0.074 },
      ],
      [
        [
          1,
          "Cup volume (mL)",
          "The calibrated cup holds 0.95 % of the bowl; 0.96 to 1.04 % are allowed. Each cup is counted as 1.00 %: standardise it again.",
        ],
      ],
      "one cup is one cause, however many tests rest on it (our own rule)",
    ],
  ],
};
