import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Measure volume (ft³)": 0.25, "Aggregate size": "1 in" }, "from memory, ASTM C138 Table 1"],
    [{ "Measure volume": "7 L", "Aggregate size": "25 mm" }, "from memory, ASTM C138 Table 1"],
    [
      { "Measure volume (L)": 5.67, "Aggregate size": "3/4 in" },
      "from memory, ASTM C138 Table 1: 5.66 L is 0.2 ft³",
    ],
    [{ "Measure volume (m³)": 0.014, "Aggregate size": "50 mm" }, "from memory, ASTM C138 Table 1"],
  ],
  speaks: [
    [
      { "Measure volume (ft³)": 0.25, "Aggregate size": "1 1/2 in" },
      [
        [
          1,
          "Measure volume (ft³)",
          "For aggregate of 1.5 in the measure must hold at least 0.4 ft³ (11 L). The density cannot be relied on: use a larger measure.",
        ],
      ],
      "from memory, ASTM C138 Table 1",
    ],
    [
      { "Measure volume": 7, "Aggregate size": "37.5 mm" },
      [
        [
          1,
          "Measure volume",
          "For aggregate of 37.5 mm the measure must hold at least 0.4 ft³ (11 L). The density cannot be relied on: use a larger measure.",
        ],
      ],
      "from memory, ASTM C138 Table 1",
    ],
  ],
};
