import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      [
        { Mix: "A", "Sampling place": "truck" },
        { Mix: "A", "Sampling place": "Truck" },
        { Mix: "B", "Sampling place": "hose" },
      ],
      "one place for each mix",
    ],
  ],
  speaks: [
    [
      [
        { Mix: "A", "Sampling place": "truck" },
        { Mix: "A", "Sampling place": "hose", "First reading": 5, "Second reading": 5 },
        { Mix: "A", "Sampling place": "Hose", "First reading": 4.5, "Second reading": 4.5 },
      ],
      [
        [
          0,
          "Sampling place",
          "The tests of A were sampled in different places, with these mean air contents: truck 6.00 % (1), hose 4.75 % (2). Compare them apart.",
        ],
      ],
      "worked by hand: (5 + 4.5) / 2",
    ],
  ],
};
