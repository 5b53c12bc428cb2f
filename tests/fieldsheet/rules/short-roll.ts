import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "Rolling time (s)": 60 }, MANUAL],
    [{ "Rolling time (s)": -5 }, "told as below zero"],
  ],
  speaks: [
    [
      { "Rolling time (s)": 0 },
      [
        [
          1,
          "Rolling time (s)",
          "0 s of rolling are less than the minute that the method asks for. Air may have stayed in the concrete.",
        ],
      ],
      MANUAL,
    ],
    [
      { "Rolling time (s)": 30 },
      [
        [
          1,
          "Rolling time (s)",
          "30 s of rolling are less than the minute that the method asks for. Air may have stayed in the concrete.",
        ],
      ],
      MANUAL,
    ],
  ],
};
