import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol strength (%)": -70 }, "no strength"],
    [{ "Alcohol strength (%)": 70 }, "common practice"],
    [{ "Alcohol strength": 0.7 }, "a cell formatted as a percentage"],
  ],
  speaks: [
    [
      { "Alcohol strength (%)": 0 },
      [
        [
          1,
          "Alcohol strength (%)",
          "The correction is for alcohol of 70 %, not 0 %. Look at the bottle and at the record.",
        ],
      ],
      "common practice",
    ],
    [
      { "Alcohol strength (%)": 1 },
      [
        [
          1,
          "Alcohol strength (%)",
          "The correction is for alcohol of 70 %, not 100 %. Look at the bottle and at the record.",
        ],
      ],
      "a whole share in a cell with a percentage format",
    ],
    [
      { "Alcohol strength (%)": 91 },
      [
        [
          1,
          "Alcohol strength (%)",
          "The correction is for alcohol of 70 %, not 91 %. Look at the bottle and at the record.",
        ],
      ],
      "common practice",
    ],
  ],
};
