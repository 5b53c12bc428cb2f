import type { RuleCases } from "../rule-cases";

const SIEVING = "Louisiana DOTD TR 202 (2008)";

export const cases: RuleCases = {
  silent: [
    [{ "Aggregate size": "1 1/2 in" }, SIEVING],
    [{ "Aggregate size": "2 in", "Wet sieved": "yes" }, SIEVING],
    [{ "Aggregate size": 37.5 }, "37.5 can only be millimetres"],
  ],
  speaks: [
    [
      { "Aggregate size (in)": 2 },
      [
        [
          1,
          "Aggregate size (in)",
          "Aggregate of 2 in is larger than the 1.5 in that the bowl takes. Remove it by wet sieving, and record that it was done.",
        ],
      ],
      SIEVING,
    ],
    [
      { "Aggregate size": "50 mm", "Wet sieved": "no" },
      [
        [
          1,
          "Aggregate size",
          "Aggregate of 50 mm is larger than the 37.5 mm that the bowl takes. Remove it by wet sieving, and record that it was done.",
        ],
      ],
      SIEVING,
    ],
  ],
};
