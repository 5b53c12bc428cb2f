import type { RuleCases } from "../rule-cases";

const HOLD = "Hold the load and ask the engineer.";
const MASSES = { "Batch water (lb)": 250, "Cementitious (lb)": 611 };

export const cases: RuleCases = {
  silent: [
    [{ ...MASSES, "Max w/cm": 0.41 }, "by hand: 250 / 611 = 0.4092"],
    [{ ...MASSES, "Exposure class": "F1" }, "ACI 318-19, from memory: 0.55"],
    [{ ...MASSES, "Exposure class": "F0" }, "F0 has no limit; ACI 318-19, from memory"],
    [
      { ...MASSES, "Water added on site (gal)": 2, "Max w/cm": 0.45 },
      "by hand: (250 + 2 × 8.33) / 611 = 0.4364",
    ],
    [{ ...MASSES, "Batch water (lb)": null, "Max w/cm": 0.3 }, "a blank is not a zero"],
  ],
  speaks: [
    [
      { ...MASSES, "Max w/cm": 0.4 },
      [
        [
          1,
          "Batch water (lb)",
          `The w/cm is 0.409 with all water counted; 0.4 is the most allowed. ${HOLD}`,
        ],
      ],
      "by hand: 250 / 611 = 0.4092",
    ],
    [
      {
        ...MASSES,
        "Free moisture (lb)": 30,
        "Water added on site (gal)": 3,
        "Exposure class": "F2",
      },
      [
        [
          1,
          "Water added on site (gal)",
          `The w/cm is 0.499 with all water counted, also what was added on site; 0.45 is the most allowed. ${HOLD}`,
        ],
      ],
      "by hand: (250 + 30 + 3 × 8.33) / 611 = 0.4992; F2 0.45, ACI 318-19, from memory",
    ],
    [
      {
        "Batch water (L)": 160,
        "Cementitious (kg)": 360,
        "Water added on site (L)": 10,
        "Exposure class": "F2, C2",
      },
      [
        [
          1,
          "Water added on site (L)",
          `The w/cm is 0.472 with all water counted, also what was added on site; 0.4 is the most allowed. ${HOLD}`,
        ],
      ],
      "by hand: 170 / 360 = 0.4722; the least of F2 0.45 and C2 0.40, ACI 318-19, from memory",
    ],
    [
      { ...MASSES, "Water added on site": 3, "Max w/cm": 0.5 },
      [
        [
          1,
          "Batch water (lb)",
          "The w/cm was not compared with its limit, because water and binder are not in one system of units. Write the unit of each into its header: lb or gal, or kg or L.",
        ],
      ],
      "a unit is never guessed",
    ],
  ],
};
