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
      [{ "Reported air": 0.06 }, { "Reported air": 0.0575 }],
      [
        [
          1,
          "Reported air",
          "0.06 looks like 6 % in a cell with a percentage format. Type 6 into a cell with a number format.",
        ],
        [
          2,
          "Reported air",
          "0.0575 % is reported, but the record gives 6 %: reading 6 less 0 for alcohol plus 0 for cups, to the nearest 0.25.",
        ],
      ],
      "how spreadsheets keep percentages; 5.75 would be wrong as well",
    ],
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
