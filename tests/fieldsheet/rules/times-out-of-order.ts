import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "Sampled from": "9:45", "Sampled to": "9:55", "Test start": "10:00" },
      "from the definition of a sample",
    ],
    [{ "Sampled from": "9:45", "Sampled to": null, "Test start": "9:45" }, "at the same minute"],
  ],
  speaks: [
    [
      { "Sampled to": "10:00", "Test start": "9:58" },
      [[1, "Test start", "09:58 is before 10:00, the time for “sampled to”. Look at both times."]],
      "from the definition of a sample",
    ],
    [
      { "Sampled from": "10:00", "Sampled to": "9:00" },
      [
        [
          1,
          "Sampled to",
          "09:00 is before 10:00, the time for “sampled from”. Look at both times.",
        ],
      ],
      "from the definition of a sample",
    ],
  ],
};
