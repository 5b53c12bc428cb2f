import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      {
        "Cup volume (mL)": 21.24,
        "Bowl volume (ft³)": 0.075,
      },
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %",
    ],
    [
      {
        "Cup volume (mL)": 22.08,
        "Bowl volume (L)": 2.1238,
      },
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %",
    ],
  ],
  speaks: [
    [
      {
        "Cup volume (mL)": 22.09,
        "Bowl volume (ft³)": 0.075,
      },
      [
        [
          1,
          "Cup volume (mL)",
          "Cup volume (mL): the calibrated cup holds 1.04 % of the bowl; 0.96 to 1.04 % are allowed. Standardise it again: results with cups are off by that much for each cup.",
        ],
      ],
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %",
    ],
    [
      {
        "Cup volume": 20,
        "Bowl volume": 2124,
      },
      [
        [
          1,
          "Cup volume",
          "Cup volume: the calibrated cup holds 0.942 % of the bowl; 0.96 to 1.04 % are allowed. Standardise it again: results with cups are off by that much for each cup.",
        ],
      ],
      "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %",
    ],
    [
      [
        {
          "Cup volume (mL)": 20,
          "Bowl volume (ft³)": 0.074,
        },
        {
          "Cup volume (mL)": 20,
          "Bowl volume (ft³)": 0.074,
        },
        {
          "Cup volume (mL)": 20,
          "Bowl volume (ft³)": 0.074,
        },
      ],
      [
        [
          1,
          "Cup volume (mL)",
          "Cup volume (mL): the calibrated cup holds 0.954 % of the bowl; 0.96 to 1.04 % are allowed. Standardise it again: results with cups are off by that much for each cup.",
        ],
      ],
      "one cup is one cause, however many tests rest on it (our own rule)",
    ],
  ],
};
