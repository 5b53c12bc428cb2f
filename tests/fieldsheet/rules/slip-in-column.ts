import type { RuleCases } from "../rule-cases";

const TABLE = "ASTM C173 Table 1 as reproduced in a meter maker's manual (2019)";

/** Tests of 7.00 with 64 oz, of which 0.6 is subtracted: 6.40, reported as 6.50. */
const corrected = (reported: number) => ({
  "First reading": 7,
  "Second reading": 7,
  "Alcohol (oz)": 64,
  "Reported air": reported,
});
const plain = { "Alcohol (oz)": 16, "Reported air": 6 };
const unrounded = (first: number) => ({
  "First reading": first,
  "Second reading": first,
  "Alcohol (oz)": 48,
  "Reported air": first - 0.3,
});

export const cases: RuleCases = {
  silent: [
    [
      [corrected(7), corrected(7), corrected(7), plain, plain],
      "three rows are slips of their own (our own limit)",
    ],
    [
      [corrected(7), corrected(7), corrected(7), corrected(7), corrected(6.5), corrected(6.5)],
      "four of six are no formula (our own limit: four fifths)",
    ],
    [[corrected(6.5), corrected(6.5), corrected(6.5), corrected(6.5)], `7 - 0.6 = 6.4; ${TABLE}`],
    [
      [corrected(6.25), corrected(6.75), corrected(7.25), corrected(9)],
      "four wrong results, each in another way",
    ],
  ],
  speaks: [
    [
      [corrected(7), plain, corrected(7), corrected(7), corrected(7), corrected(7)],
      [
        [
          0,
          "Reported air",
          "5 of 5 rows with alcohol to correct for, from 2.5 pt (40 oz, 1.2 L) on, leave out the correction. Mend the formula of the column, or see how it was worked out.",
        ],
      ],
      `7.00 reported instead of 7 - 0.6 = 6.4, 6.50; ${TABLE}`,
    ],
    [
      [5, 5.25, 6.5, 7].map(unrounded),
      [
        [
          0,
          "Reported air",
          "4 of 4 rows whose result lies between the steps are not rounded to the nearest 0.25 %, half to the even step. Mend the formula of the column, or see how it was worked out.",
        ],
      ],
      `4.7, 4.95, 6.2 and 6.7 as they are; ${TABLE}`,
    ],
    [
      [1, 2, 3, 1, 2].map((cups) => ({
        "First reading": 8.75,
        "Second reading": 8.75,
        Cups: cups,
        "Reported air": 8.75,
      })),
      [
        [
          0,
          "Reported air",
          "5 of 5 rows with calibrated cups leave them out. Mend the formula of the column, or see how it was worked out.",
        ],
      ],
      "8.75 + 1, 2, 3; each cup 1.00 %, from memory, ASTM C173 apparatus",
    ],
  ],
};
