import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol after zeroing": "no" }, "abstracts of ASTM C173-01e1, -08a and -12"],
    [{ "Alcohol after zeroing (oz)": 0 }, "none was added"],
  ],
  speaks: [
    [
      { "Alcohol after zeroing": "yes" },
      [
        [
          1,
          "Alcohol after zeroing",
          "Alcohol was added after the meter had been filled to zero. The test is void: repeat it with all of the alcohol before zeroing.",
        ],
      ],
      "abstracts of ASTM C173-01e1, -08a and -12",
    ],
    [
      { "Alcohol added after zeroing the meter (oz)": 8 },
      [
        [
          1,
          "Alcohol added after zeroing the meter (oz)",
          "Alcohol was added after the meter had been filled to zero. The test is void: repeat it with all of the alcohol before zeroing.",
        ],
      ],
      "an amount says the same as a yes",
    ],
  ],
};
