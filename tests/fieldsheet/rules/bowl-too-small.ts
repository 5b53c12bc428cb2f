import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Bowl volume (ft³)": 0.075 }, "Louisiana DOTD TR 202 (2008): 0.075 ft³"],
    [{ "Bowl volume (L)": 2.124 }, "Tex-414-A (2004–2008): 2.0 L"],
    [{ "Bowl volume (L)": 2 }, "Tex-414-A (2004–2008): 2.0 L, a pair and no conversion"],
    [{ "Bowl volume": "2,080 mL" }, "Tex-414-A (2004–2008): 2.0 L"],
  ],
  speaks: [
    [
      { "Bowl volume (ft³)": 0.0749 },
      [
        [
          1,
          "Bowl volume (ft³)",
          "A bowl of 0.0749 ft³ is smaller than the 0.075 ft³ that the method asks for. Standardise the bowl again, or use another meter.",
        ],
      ],
      "Louisiana DOTD TR 202 (2008): 0.075 ft³",
    ],
    [
      { "Bowl volume": "1.95 L" },
      [
        [
          1,
          "Bowl volume",
          "A bowl of 1.95 L is smaller than the 2 L that the method asks for. Standardise the bowl again, or use another meter.",
        ],
      ],
      "Tex-414-A (2004–2008): 2.0 L",
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
          "Bowl volume (ft³)",
          "A bowl of 0.074 ft³ is smaller than the 0.075 ft³ that the method asks for. Standardise the bowl again, or use another meter.",
        ],
      ],
      "one bowl is one cause, however many tests rest on it (our own rule)",
    ],
  ],
};
