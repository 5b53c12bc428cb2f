import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "Inversion time (s)": -5 }, "told as below zero"],
    [{ "Inversion time (s)": 45 }, MANUAL],
    [{ "Inversion time (min)": 1 }, "60 s"],
  ],
  speaks: [
    [
      { "Inversion time (s)": 0 },
      [
        [
          1,
          "Inversion time (s)",
          "0 s of inverting are less than the 45 s that the method asks for. Air may have stayed in the concrete.",
        ],
      ],
      MANUAL,
    ],
    [
      { "Inversion time (s)": 40 },
      [
        [
          1,
          "Inversion time (s)",
          "40 s of inverting are less than the 45 s that the method asks for. Air may have stayed in the concrete.",
        ],
      ],
      MANUAL,
    ],
    [
      { "Total inversion": "0.5 min" },
      [
        [
          1,
          "Total inversion",
          "30 s of inverting are less than the 45 s that the method asks for. Air may have stayed in the concrete.",
        ],
      ],
      MANUAL,
    ],
  ],
};
