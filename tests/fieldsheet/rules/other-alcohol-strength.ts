import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol strength (%)": 70 }, "common practice"],
    [{ "Alcohol strength": 0.7 }, "a cell formatted as a percentage"],
  ],
  speaks: [
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
