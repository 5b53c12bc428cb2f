import type { RuleCases } from "../rule-cases";

const NECK = "Louisiana DOTD TR 202 (2008): the scale reaches at least to 9 %";

export const cases: RuleCases = {
  silent: [[{ "First reading": 9, "Second reading": 9 }, NECK]],
  speaks: [
    [
      { "First reading": 9.25 },
      [
        [
          1,
          "First reading",
          "A meter reading of 9.25 % is beyond the 9 % that the neck scale is sure to reach. Add calibrated cups of water until the level is on the scale, and give the cups separately.",
        ],
      ],
      NECK,
    ],
    [
      { "Second reading": undefined, "First reading": undefined, "Meter reading": 11.5 },
      [
        [
          1,
          "Meter reading",
          "A meter reading of 11.5 % is beyond the 9 % that the neck scale is sure to reach. Add calibrated cups of water until the level is on the scale, and give the cups separately.",
        ],
      ],
      NECK,
    ],
  ],
};
