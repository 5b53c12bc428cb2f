import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Method: "C231", "Aggregate correction factor": 0.7 }, "Kansas DOT KT-18"],
    [{ Method: "C231", "Slump (in)": 3 }, "Kansas DOT KT-18"],
    [{ Method: "C173", "Aggregate correction factor": 0.9 }, "the volumetric method needs none"],
    [
      { Method: "C231", Aggregate: "lightweight", "Aggregate correction factor": 0.9 },
      "one cause, told by wrong-method-for-aggregate",
    ],
  ],
  speaks: [
    [
      { Method: "Pressure", "Aggregate correction factor": 0.8 },
      [
        [
          1,
          "Aggregate correction factor",
          "With an aggregate correction factor of 0.8 %, 0.8 % or more, a pressure meter is verified by the volumetric method. Make a volumetric test.",
        ],
      ],
      "Kansas DOT KT-18",
    ],
    [
      { Method: "C231", "Slump (in)": 2 },
      [
        [
          1,
          "Slump (in)",
          "With a slump of 2 in, 2 in or less, a pressure meter is verified by the volumetric method. Make a volumetric test.",
        ],
      ],
      "Kansas DOT KT-18",
    ],
    [
      { Method: "C231", "Slump (mm)": 45 },
      [
        [
          1,
          "Slump (mm)",
          "With a slump of 45 mm, 50 mm or less, a pressure meter is verified by the volumetric method. Make a volumetric test.",
        ],
      ],
      "Kansas DOT KT-18; our own pair",
    ],
  ],
};
