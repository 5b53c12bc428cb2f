import type { RuleCases } from "../rule-cases";

const CALCULATION = "from memory, ASTM C173 calculation";

export const cases: RuleCases = {
  silent: [
    [
      { "Alcohol (oz)": undefined, "Reported air": 5 },
      "6 - 0.9 = 5.1, 5.00, with the last correction of ASTM C173 Table 1",
    ],
    [
      { "First reading": 6, "Second reading": 6.25, "Alcohol (oz)": "3 pt", "Reported air": 6 },
      "6.25 - 0.3 = 5.95, " + CALCULATION,
    ],
    [{ "Reported air": null }, "nothing is reported yet"],
    [{ Foam: 3, "Reported air": 7 }, "void-test-reported says it"],
    [
      { "Alcohol (oz)": undefined, "Reported air": 5.75 },
      "some correction that the sheet does not show",
    ],
  ],
  speaks: [
    [
      { "Alcohol (oz)": undefined, "Reported air": 4.75 },
      [
        [
          1,
          "Reported air",
          "4.75 % is reported, but the record gives 6 %: reading 6 less 0 for alcohol plus 0 for cups, to the nearest 0.25.",
        ],
      ],
      "no correction of ASTM C173 Table 1 leads below 6 - 0.9 = 5.1, 5.00",
    ],
    [
      { "First reading": 7.5, "Second reading": 7.75, "Alcohol (oz)": 64, "Reported air": 7.75 },
      [
        [
          1,
          "Reported air",
          "7.75 % is reported, but the record gives 7.25 %: reading 7.75 less 0.6 for alcohol plus 0 for cups, to the nearest 0.25.",
        ],
      ],
      "7.75 - 0.6 = 7.15, " + CALCULATION,
    ],
    [
      { "Alcohol (oz)": undefined, "Reported air": 6.25 },
      [
        [
          1,
          "Reported air",
          "6.25 % is reported, but the record gives 6 %: reading 6 less 0 for alcohol plus 0 for cups, to the nearest 0.25.",
        ],
      ],
      "a correction is subtracted, never added",
    ],
  ],
};
