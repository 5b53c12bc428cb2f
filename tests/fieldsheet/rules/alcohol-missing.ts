import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol (oz)": 0 }, "none is written as 0, common practice"],
    [{ "Alcohol (oz)": "some" }, "not-a-number says it"],
    [{ "Alcohol (oz)": null, Foam: 3 }, "a void test needs no correction"],
  ],
  speaks: [
    [
      { "Alcohol (oz)": null },
      [
        [
          1,
          "Alcohol (oz)",
          "The amount of alcohol is missing, so no correction can be applied. Enter it, or 0 if there was none.",
        ],
      ],
      "common practice",
    ],
  ],
};
