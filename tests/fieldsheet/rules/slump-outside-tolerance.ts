import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Slump (mm)": 100, "Lowest slump (in)": 5 }, "two systems are not compared"],
    [{ "Slump (in)": 7, "Lowest slump (in)": 3 }, "no most slump is specified"],
    [{ "Slump (in)": 3, "Highest slump (in)": 5 }, "no least slump is specified"],
    [
      { "Slump (in)": 3, "Lowest slump (in)": 3, "Highest slump (in)": 5 },
      "a limit itself is within",
    ],
    [{ "Slump (in)": 2.5, "Specified slump": 2 }, "from memory, ASTM C94: 2 ± 1/2"],
    [{ "Slump (in)": 5, "Specified slump": 4 }, "from memory, ASTM C94: 4 ± 1"],
    [{ Slump: "6 1/2 in", "Nominal slump": "5 in" }, "from memory, ASTM C94"],
    [{ "Slump (mm)": 65, "Target slump (mm)": 50 }, "from memory, ASTM C94: 50 ± 15 mm"],
    [{ "Slump (mm)": 100, "Specified slump (in)": 4 }, "two systems are not compared"],
  ],
  speaks: [
    [
      { "Slump (mm)": 130, "Highest slump (mm)": 125 },
      [
        [
          1,
          "Slump (mm)",
          "The slump, 130 mm, is above the 125 mm specified. A check test on another portion of the same sample decides.",
        ],
      ],
      "a limit of the sheet",
    ],
    [
      {
        "Slump (in)": 2.75,
        "Lowest slump (in)": 3,
        "Highest slump (in)": 5,
        "Specified slump (in)": 2.5,
      },
      [
        [
          1,
          "Slump (in)",
          "The slump, 2.75 in, is below the 3 in specified. A check test on another portion of the same sample decides.",
        ],
      ],
      "limits of the sheet go before a tolerance",
    ],
    [
      { "Slump (in)": 2.75, "Specified slump": 2 },
      [
        [
          1,
          "Slump (in)",
          "A slump of 2.75 in is too far from the 2 in specified; 1.5 to 2.5 in are allowed. A check test on another portion of the same sample decides.",
        ],
      ],
      "from memory, ASTM C94",
    ],
    [
      { "Slump (in)": 5.25, "Specified slump": 4 },
      [
        [
          1,
          "Slump (in)",
          "A slump of 5.25 in is too far from the 4 in specified; 3 to 5 in are allowed. A check test on another portion of the same sample decides.",
        ],
      ],
      "from memory, ASTM C94",
    ],
    [
      { "Slump (in)": "3 1/4", "Specified slump": 5 },
      [
        [
          1,
          "Slump (in)",
          "A slump of 3.25 in is too far from the 5 in specified; 3.5 to 6.5 in are allowed. A check test on another portion of the same sample decides.",
        ],
      ],
      "from memory, ASTM C94: 5 ± 1 1/2",
    ],
    [
      { "Slump (mm)": 126, "Target slump (mm)": 100 },
      [
        [
          1,
          "Slump (mm)",
          "A slump of 126 mm is too far from the 100 mm specified; 75 to 125 mm are allowed. A check test on another portion of the same sample decides.",
        ],
      ],
      "from memory, ASTM C94: 100 ± 25 mm",
    ],
    [
      { Slump: 105, "Target slump": 150 },
      [
        [
          1,
          "Slump",
          "A slump of 105 mm is too far from the 150 mm specified; 110 to 190 mm are allowed. A check test on another portion of the same sample decides.",
        ],
      ],
      "from memory, ASTM C94: 150 ± 40 mm",
    ],
  ],
};
