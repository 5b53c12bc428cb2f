import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol (oz)": 80 }, MANUAL],
    [{ "Alcohol (oz)": "2.4 L" }, MANUAL],
  ],
  speaks: [
    [
      { "Alcohol (oz)": 84 },
      [
        [
          1,
          "Alcohol (oz)",
          "The correction table ends at 80 oz, and 84 oz lies beyond it, so no correction can be given. Look at the amount and its unit again.",
        ],
      ],
      MANUAL + ", Table 1",
    ],
  ],
};
