import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ "Time to settle (min)": 6 }, MANUAL + ": six minutes are allowed"],
    [{ "Time to settle (min)": "less than 6" }, MANUAL],
    [{ "Time to settle (s)": 300 }, "300 s are 5 min"],
  ],
  speaks: [
    [
      { "Time to settle (min)": "over 6" },
      [
        [
          1,
          "Time to settle (min)",
          "The level needed more than 6 minutes to settle, more than the 6 allowed. The test is void: repeat it with more alcohol.",
        ],
      ],
      MANUAL,
    ],
    [
      { "Time to settle (min)": 6.5 },
      [
        [
          1,
          "Time to settle (min)",
          "The level needed 6.5 minutes to settle, more than the 6 allowed. The test is void: repeat it with more alcohol.",
        ],
      ],
      MANUAL,
    ],
    [
      { "Time to settle (s)": 390 },
      [
        [
          1,
          "Time to settle (s)",
          "The level needed 6.5 minutes to settle, more than the 6 allowed. The test is void: repeat it with more alcohol.",
        ],
      ],
      MANUAL + "; 390 s are 6.5 min",
    ],
  ],
};
