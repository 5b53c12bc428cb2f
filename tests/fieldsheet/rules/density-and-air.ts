import type { RuleCases } from "../rule-cases";

const BY_AIR = "derived: ρ (100 − A) ÷ (100 − A₀)";

export const cases: RuleCases = {
  silent: [
    [
      { "Density (lb/ft³)": 143, "Specified density": 145, "Target air": 6 },
      "3 lb/ft³ either way, common practice",
    ],
    [{ "Density (lb/ft³)": 140, "Specified density": 145 }, "no air is specified"],
  ],
  speaks: [
    [
      {
        "First reading": 8,
        "Second reading": 8,
        "Density (lb/ft³)": 141,
        "Specified density": 145,
        "Target air": 6,
      },
      [
        [
          1,
          "Density (lb/ft³)",
          "The density lies −4.0 lb/ft³ off its target. 8 % of air in place of 6 % makes −3.1 of it; −0.9 lb/ft³ are left for moisture, batching or weighing.",
        ],
      ],
      `${BY_AIR}: 145 × 92 / 94 = 141.9`,
    ],
    [
      { "Density (kg/m³)": 1900, "Specified density": 1800, Low: 5, High: 8 },
      [
        [
          1,
          "Density (kg/m³)",
          "The density lies +100 kg/m³ off its target. 6 % of air in place of 6.5 % makes +10 of it; +90 kg/m³ are left for moisture, batching or weighing.",
        ],
      ],
      `${BY_AIR}: 1,800 × 94 / 93.5 = 1,810; the middle of the limits`,
    ],
  ],
};
