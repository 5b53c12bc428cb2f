import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [[{ Foam: 3, Sample: "S-7" }, { Sample: "S-7" }], MANUAL],
    [[{ Foam: 3, Sample: "S-7" }, { Sample: "S-8" }, { Sample: "S-7R" }], "an addition to the id"],
    [
      [
        { Foam: 3, Sample: "S-7", Load: 4 },
        { Sample: "S-8", Load: 4 },
      ],
      "the next test of the same load",
    ],
    [
      [
        { Foam: 3, Sample: "S-7" },
        { Sample: "S-8", "Repeat of": "s-7" },
      ],
      "the repeat says so",
    ],
    [{ Foam: 3, Sample: undefined }, "samples cannot be told apart"],
  ],
  speaks: [
    [
      [
        { Leak: "yes", Sample: undefined, Load: 4, Date: "2026-06-09" },
        { Load: 4, Date: "2026-06-10" },
      ],
      [
        [
          1,
          "Load",
          "The test is void, and no later test of the same sample is in the sheet. Repeat it, or enter the repeat below it.",
        ],
      ],
      "the same load number on another day is another load",
    ],
    [
      [{ Foam: 3, Sample: "S-7" }, { Sample: "S-8" }],
      [
        [
          1,
          "Sample",
          "The test is void, and no later test of the same sample is in the sheet. Repeat it, or enter the repeat below it.",
        ],
      ],
      MANUAL,
    ],
    [
      [
        { Foam: 3, Sample: "1", Date: "2026-06-09" },
        { Sample: "1", Date: "2026-06-10" },
      ],
      [
        [
          1,
          "Sample",
          "The test is void, and no later test of the same sample is in the sheet. Repeat it, or enter the repeat below it.",
        ],
      ],
      "the same number on another day is another sample",
    ],
    [
      [{ Leak: "yes", Sample: undefined, Load: 4 }, { Load: 5 }],
      [
        [
          1,
          "Load",
          "The test is void, and no later test of the same sample is in the sheet. Repeat it, or enter the repeat below it.",
        ],
      ],
      MANUAL,
    ],
  ],
};
