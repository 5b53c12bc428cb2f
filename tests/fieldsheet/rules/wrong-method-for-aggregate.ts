import type { RuleCases } from "../rule-cases";

const SCOPE = "ASTM C231-03 scope; Kansas DOT KT-18; Montana DOT MT 102";

export const cases: RuleCases = {
  silent: [
    [
      { Method: "C173", Aggregate: "expanded shale" },
      SCOPE + ": the volumetric method is right for it",
    ],
    [{ Method: "C231", Aggregate: "crushed limestone" }, SCOPE],
    [{ Method: "pressure", Aggregate: "no lightweight" }, "said not to be"],
  ],
  speaks: [
    [
      { Method: "C231 Type B", Aggregate: "expanded shale" },
      [
        [
          1,
          "Method",
          "The pressure method, “C231 Type B”, counts in the air inside expanded shale aggregate. The test does not stand: repeat it by the volumetric method.",
        ],
      ],
      SCOPE,
    ],
    [
      { "Test method": "AASHTO T 152", "Aggregate type": "air-cooled slag" },
      [
        [
          1,
          "Test method",
          "The pressure method, “AASHTO T 152”, counts in the air inside air-cooled slag aggregate. The test does not stand: repeat it by the volumetric method.",
        ],
      ],
      SCOPE,
    ],
  ],
};
