import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "Second reading": undefined }, "agreement-not-recorded says it once"],
    [{ "Second reading": null, Foam: 3 }, "the test is void and needs no second reading"],
  ],
  speaks: [
    [
      { "Second reading": null },
      [
        [
          1,
          "Second reading",
          "The second reading is missing. Enter the reading that was taken after rolling again.",
        ],
      ],
      MANUAL,
    ],
  ],
};
