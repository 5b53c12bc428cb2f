import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [[{ "Longest inversion (s)": 5 }, MANUAL]],
  speaks: [
    [
      { "Longest inversion (s)": 6 },
      [
        [
          1,
          "Longest inversion (s)",
          "6 s upside down are more than the 5 s allowed at a time. Aggregate may have jammed the neck.",
        ],
      ],
      MANUAL,
    ],
  ],
};
