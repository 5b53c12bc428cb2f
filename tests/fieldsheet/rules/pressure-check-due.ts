import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Method: "C231", "Aggregate correction factor": 0.7 }, "Kansas DOT KT-18"],
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
  ],
};
