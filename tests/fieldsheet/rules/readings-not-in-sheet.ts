import type { RuleCases, Cells } from "../rule-cases";

/** A sheet of results: no reading, no alcohol. */
const RESULT: Cells = {
  "First reading": undefined,
  "Second reading": undefined,
  "Alcohol (oz)": undefined,
  "Reported air": 6,
};

export const cases: RuleCases = {
  silent: [
    [{ "Reported air": 6 }, "there are readings"],
    [{ ...RESULT, Rdg: 5.75 }, "a column may hold them, and is asked about"],
    [{ ...RESULT, Method: "pressure" }, "a test of another method"],
  ],
  speaks: [
    [
      [RESULT, { ...RESULT, "Reported air": 7 }],
      [
        [
          0,
          "Reported air",
          "The sheet records no meter readings, so the air that it reports cannot be checked, and its tests are incomplete. What else it records was looked at.",
        ],
      ],
      "from the definition of the method: without a reading there is no result; said once",
    ],
  ],
};
