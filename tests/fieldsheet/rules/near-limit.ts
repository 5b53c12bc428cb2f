import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Low: 5.5, High: 6.5 }, "0.50 from both limits"],
    [{ Low: 6.25 }, "outside-specification says it"],
    [{}, "no limits"],
  ],
  speaks: [
    [
      { Low: 5.75 },
      [
        [
          1,
          "",
          "The air content, 6 %, is within the specification by 0.25 %. One graduation on the neck decides here: see that the readings were taken with care.",
        ],
      ],
      "our own rule: one graduation of 0.25 %",
    ],
    [
      { High: 6, "Reported air": 6 },
      [
        [
          1,
          "Reported air",
          "Within, on the limit: the air content is 6 %, and a limit itself is within. One graduation on the neck decides here: see that the readings were taken with care.",
        ],
      ],
      "our own rule: one graduation of 0.25 %",
    ],
  ],
};
