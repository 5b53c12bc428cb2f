import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [
      [
        { Foam: 3, Sample: "S-7" },
        { Sample: "S-7", "Alcohol (oz)": 24 },
      ],
      MANUAL,
    ],
    [
      [{ Leak: "yes", Sample: "S-7" }, { Sample: "S-7" }],
      "more alcohol does not help against a leak",
    ],
    [
      [
        { Foam: 3, Sample: "S-7" },
        { Sample: "S-7", "Alcohol (oz)": "1 pt" },
      ],
      "two units are not compared",
    ],
  ],
  speaks: [
    [
      [{ Foam: 3, Sample: "S-7" }, { Sample: "S-7" }],
      [
        [
          2,
          "Alcohol (oz)",
          "The test before was void with 16 oz of alcohol, and this repeat used 16 oz. Repeat a void test with more.",
        ],
      ],
      MANUAL,
    ],
    [
      [
        { "Time to settle": 7, Sample: "S-7" },
        { Sample: "S-7", "Alcohol (oz)": 8 },
      ],
      [
        [
          2,
          "Alcohol (oz)",
          "The test before was void with 16 oz of alcohol, and this repeat used 8 oz. Repeat a void test with more.",
        ],
      ],
      MANUAL,
    ],
  ],
};
