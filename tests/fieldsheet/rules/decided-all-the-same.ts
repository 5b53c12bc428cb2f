import type { RuleCases } from "../rule-cases";

const TABLE = "derived from C173 Table 1 (0 to 0.9 %)";

export const cases: RuleCases = {
  silent: [
    [
      { Cups: 2, "Alcohol (oz)": null, Low: 4.5, High: 7.5 },
      "derived: 8.00 less 0 to 0.9 lies on both sides",
    ],
    [
      { "First reading": 5, "Second reading": 6, "Third reading": null, Low: 7, High: 9 },
      "a third reading may lie anywhere",
    ],
    [{ Low: 4.5, High: 7.5 }, "nothing is missing"],
    [{ "Alcohol (oz)": null, Low: 5.5, High: 7.5 }, `${TABLE}: 5.10 is below, 6.00 is within`],
    [{ "Alcohol (oz)": null }, "no limits"],
    [
      { "First reading": 7.5, "Second reading": null, Low: 4.5, High: 7.5 },
      "derived: 7.50 ± 0.25 lies on both sides",
    ],
  ],
  speaks: [
    [
      { "Alcohol (oz)": null, Low: 4.5, High: 7.5 },
      [
        [
          1,
          "",
          "Whatever is missing, the air content lies between 5 and 6 %, which is within the limits. The load is decided; complete the record all the same.",
        ],
      ],
      `${TABLE}: 5.10 to 6.00`,
    ],
    [
      { "Second reading": null, Low: 7, High: 9 },
      [
        [
          1,
          "",
          "Whatever is missing, the air content lies between 5.75 and 6.25 %, which is below the limits. The load is decided; complete the record all the same.",
        ],
      ],
      "derived: 6.00 ± 0.25",
    ],
  ],
};
