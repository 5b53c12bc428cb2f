import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [
      { "Second reading": undefined, "First reading": 5, "Final reading": 6, Method: "pressure" },
      "another method",
    ],
    [
      { "Second reading": undefined, "First reading": 5, "Final reading": null },
      "one of the two is not there",
    ],
    [
      { "Second reading": undefined, "First reading": null, "Final reading": 6 },
      "one of the two is not there",
    ],
    [{}, "the sheet has two readings"],
    [
      { "Second reading": undefined, "Final reading": 6.25 },
      `the final reading is the second, and the first agrees with it; ${MANUAL}`,
    ],
  ],
  speaks: [
    [
      [
        { "First reading": undefined, "Second reading": undefined, "Final reading": 6 },
        { "Final reading": 5 },
      ],
      [
        [
          0,
          "Final reading",
          "The sheet records one reading a test, so it cannot be judged whether two readings agreed. Record the first and the second reading.",
        ],
      ],
      MANUAL + "; said once",
    ],
    [
      [
        { "Second reading": undefined, "Final reading": 6.5 },
        { "Final reading": 6.25 },
        { "Final reading": 5.5 },
      ],
      [
        [
          0,
          "Final reading",
          "The first and the final reading differ by more than 0.25 %, and no reading between them is in the sheet, so it cannot be judged whether two readings agreed. Tests with that: 2. Record every reading that was taken.",
        ],
      ],
      `${MANUAL}: a third reading is due when the second differs by more than 0.25 %`,
    ],
  ],
};
