import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "Density (kg/m³)": 1835, "Specified density": 1800, "Delivery standard": "ASTM C94" },
      "35 kg/m³ are within the 48 of common practice, and EN 206 is not named",
    ],
    [
      { Density: 118, "Specified density": 115 },
      "±3 lb/ft³, common practice: on the limit is within",
    ],
    [{ Density: 1895, "Target density": 1850 }, "±50 kg/m³, our own pair"],
    [{ Density: 119, "Min density": 110, "Max density": 120 }, "limits of the sheet"],
    [{ Density: 1850, "Specified density": 115 }, "two systems are not compared"],
    [
      {
        "Density (kg/m³)": 1880,
        "Specified density": 1850,
        "Delivery standard": "EN 206",
      },
      "EN 206-1 Table 17: ±30 kg/m³, on the limit is within",
    ],
    [
      { "Density (kg/m³)": 1830, "Max density": 1800, "Delivery standard": "DIN EN 206-1" },
      "EN 206-1 Table 17: 30 kg/m³ beyond the limit of a single result",
    ],
    [
      { "Density (kg/m³)": 2349, "Specified density": 2300, "Delivery standard": "EN 206" },
      "EN 206-1 Table 17 speaks of lightweight concrete; ±50 kg/m³, our own pair",
    ],
    [{ Density: null, "Specified density": 115 }, "a blank is not a zero"],
  ],
  speaks: [
    [
      { "Density (kg/m³)": 2035, "Specified density": 2000, "Delivery standard": "EN 206" },
      [
        [
          1,
          "Density (kg/m³)",
          "The fresh density, 2035 kg/m³, is above the 2030 kg/m³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "EN 206: 2,000 kg/m³ is lightweight, ± 30 for a single result",
    ],
    [
      { Density: 118.2, "Specified density": 115 },
      [
        [
          1,
          "Density",
          "The fresh density, 118.2 lb/ft³, is above the 118 lb/ft³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "±3 lb/ft³, common practice",
    ],
    [
      { Density: 111.5, "Specified density": 115 },
      [
        [
          1,
          "Density",
          "The fresh density, 111.5 lb/ft³, is below the 112 lb/ft³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "±3 lb/ft³, common practice",
    ],
    [
      { "Density (kg/m³)": 1901, "Specified density": 1850 },
      [
        [
          1,
          "Density (kg/m³)",
          "The fresh density, 1901 kg/m³, is above the 1900 kg/m³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "±50 kg/m³, our own pair",
    ],
    [
      {
        "Density (kg/m³)": 1881,
        "Specified density": 1850,
        "Delivery standard": "EN 206",
      },
      [
        [
          1,
          "Density (kg/m³)",
          "The fresh density, 1881 kg/m³, is above the 1880 kg/m³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "EN 206-1 Table 17: ±30 kg/m³",
    ],
    [
      { "Density (kg/m³)": 1569, "Min density": 1600, "Delivery standard": "EN 206:2013" },
      [
        [
          1,
          "Density (kg/m³)",
          "The fresh density, 1569 kg/m³, is below the 1570 kg/m³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "EN 206-1 Table 17: 30 kg/m³ below the least",
    ],
    [
      { Density: 121, "Max density": 120 },
      [
        [
          1,
          "Density",
          "The fresh density, 121 lb/ft³, is above the 120 lb/ft³ allowed. Look at the air content and at the weighing; a check test decides.",
        ],
      ],
      "limits of the sheet",
    ],
  ],
};
