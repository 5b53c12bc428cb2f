import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Bowl volume (ft³)": 0.075 }, "Louisiana DOTD TR 202 (2008): 0.075 ft³"],
    [{ "Bowl volume (L)": 2.124 }, "Louisiana DOTD TR 202 (2008): 0.075 ft³"],
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
      { "Bowl volume": "2.08 L" },
      [
        [
          1,
          "Bowl volume",
          "A bowl of 0.0735 ft³ is smaller than the 0.075 ft³ that the method asks for. Standardise the bowl again, or use another meter.",
        ],
      ],
      "Louisiana DOTD TR 202 (2008): 0.075 ft³",
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
