import type { RuleCases, Cells } from "../rule-cases";

const TRADE = "a trade article quoting ASTM C94";
/** A sheet of results: no reading, no alcohol. */
const RESULT: Cells = {
  "First reading": undefined,
  "Second reading": undefined,
  "Alcohol (oz)": undefined,
};

export const cases: RuleCases = {
  silent: [
    [{ ...RESULT, "Reported air": 6, Low: 6, High: 6 }, "a result on a limit is within, ASTM E29"],
    [{ ...RESULT, "Reported air": 6 }, "there are no limits"],
    [
      { "Reported air": 8, Low: 4.5, High: 7.5 },
      "the readings give another air, and another rule says so",
    ],
    [{ ...RESULT, "Reported air": 8, Rdg: 7.5, Low: 4.5, High: 7.5 }, "a column may hold readings"],
    [{ ...RESULT, "Reported air": 0.055, Low: 4.5, High: 7.5 }, "5.5 % as a spreadsheet keeps it"],
  ],
  speaks: [
    [
      { ...RESULT, "Reported air": 8, Low: 4.5, High: 7.5 },
      [
        [
          1,
          "Reported air",
          "The air as reported, 8 %, is above the high limit of 7.5 %. There are no readings to check it by; a check test on another portion of the same sample decides.",
        ],
      ],
      TRADE,
    ],
    [
      { ...RESULT, "Reported air": 4.25, Low: 4.5, High: 7.5 },
      [
        [
          1,
          "Reported air",
          "The air as reported, 4.25 %, is below the low limit of 4.5 %. There are no readings to check it by; a check test on another portion of the same sample decides.",
        ],
      ],
      TRADE,
    ],
  ],
};
