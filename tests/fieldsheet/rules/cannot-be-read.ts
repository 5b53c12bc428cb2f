import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      [{ Date: "5/6/2026" }, { Date: "5/13/2026" }],
      "5/13 shows that the month comes first in the column",
    ],
    [{ Date: "2026-06-09", "Test start": "14:05", Leak: "no" }, "our own rule"],
    [{ "Alcohol (oz)": undefined, Alcohol: 16 }, "alcohol-unit-missing says it"],
  ],
  speaks: [
    [
      { Date: "5/6/2026" },
      [
        [
          1,
          "Date",
          "“5/6/2026” can be read in two ways, day or month first: 2026-05-06 or 2026-06-05. Type it as a date, or as 2026-05-31.",
        ],
      ],
      "two different days",
    ],
    [
      [{ Leak: "✓" }, { Leak: "no" }],
      [
        [
          1,
          "Leak",
          "“✓” can be read in two ways: that it happened, or that somebody looked and it had not. Type yes or no.",
        ],
      ],
      "what a tick in a column of faults says",
    ],
    [
      { Leak: "maybe", "Test start": "late" },
      [
        [1, "Leak", "“maybe” is neither yes nor no. Type yes, no, or nothing."],
        [1, "Test start", "“late” is not a time of day. Type it as 14:05."],
      ],
      "our own rule",
    ],
    [
      { "Aggregate size (in)": 19 },
      [
        [
          1,
          "Aggregate size (in)",
          "“19” cannot be an aggregate size. Write it with its unit, such as 3/4 in or 19 mm.",
        ],
      ],
      "19 in cannot be",
    ],
    [
      { "Water before alcohol": 16 },
      [
        [
          1,
          "Water before alcohol",
          '16 has no unit. Give "pt", "oz", "L" or "mL", or write the amount as "48 oz".',
        ],
      ],
      "units are never guessed",
    ],
    [
      [{ "Time to settle (min)": 0.3125 }, { "Time to settle (min)": 0.003125 }],
      [
        [
          1,
          "Time to settle (min)",
          "0.3125 is what a spreadsheet makes of 7:30, which it takes for a time of day. Type the minutes as a number, such as 7.5, or as a text, such as 7 min 30 s.",
        ],
        [
          2,
          "Time to settle (min)",
          "0.003125 is what a spreadsheet makes of 4:30, which it takes for a time of day. Type the minutes as a number, such as 7.5, or as a text, such as 7 min 30 s.",
        ],
      ],
      "a day has 1440 minutes: 450 min of it are 0.3125, and 270 s are 0.003125",
    ],
    [
      { Low: 0.045 },
      [
        [
          1,
          "Low",
          "0.045 looks like 4.5 % in a cell with a percentage format. Type 4.5 into a cell with a number format.",
        ],
      ],
      "how spreadsheets keep percentages",
    ],
  ],
};
