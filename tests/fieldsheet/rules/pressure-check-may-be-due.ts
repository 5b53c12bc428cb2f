import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Method: "C231", "Slump (in)": 3 }, "Kansas DOT KT-18: over 2 in"],
    [{ Method: "C173", "Slump (in)": 1 }, "the volumetric method needs none"],
    [
      { Method: "C231", "Slump (in)": 1, "Aggregate correction factor": 0.9 },
      "Kansas DOT KT-18: due already, which pressure-check-due tells",
    ],
  ],
  speaks: [
    [
      { Method: "C231", "Slump (in)": 2 },
      [
        [
          1,
          "Slump (in)",
          "With a slump of 2 in, 2 in or less, the pressure meter may have to be verified by the volumetric method. See what the specification says.",
        ],
      ],
      "Kansas DOT KT-18: it may be required",
    ],
    [
      { Method: "C231", "Slump (mm)": 45 },
      [
        [
          1,
          "Slump (mm)",
          "With a slump of 45 mm, 50 mm or less, the pressure meter may have to be verified by the volumetric method. See what the specification says.",
        ],
      ],
      "Kansas DOT KT-18; our own pair",
    ],
  ],
};
