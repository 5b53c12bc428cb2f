import type { RuleCases } from "../rule-cases";

const TIMES = "ASTM C172 as told in a concrete field-technician study guide (2026)";

export const cases: RuleCases = {
  silent: [
    [
      { "Sampled from": "9:45", "Sampled to": "10:00", "Test start": "10:05" },
      TIMES + ": 15 and 5 minutes are allowed",
    ],
    [{ "Sampled to": "23:58", "Test start": "0:03" }, "5 minutes over midnight"],
  ],
  speaks: [
    [
      { "Sampled to": "10:00", "Test start": "10:06" },
      [
        [
          1,
          "Test start",
          "The test started 6 minutes after the last portion of the sample was taken; 5 are allowed. Look at the times, or sample again.",
        ],
      ],
      TIMES,
    ],
    [
      { "Sampled from": "9:40", "Sampled to": "10:00" },
      [
        [
          1,
          "Sampled to",
          "Sampling took 20 minutes from the first portion to the last; 15 are allowed. Look at the times, or sample again.",
        ],
      ],
      TIMES,
    ],
  ],
};
