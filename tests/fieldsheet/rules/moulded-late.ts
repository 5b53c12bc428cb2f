import type { RuleCases } from "../rule-cases";

const C172 = "ASTM C172 and C31, exam pages: 15 min";

export const cases: RuleCases = {
  silent: [
    [{ "Sampled to": "10:00", "Moulding began": "10:15" }, C172],
    [{ "Sampled to": "10:00", "Moulding began": null }, "nothing is recorded"],
  ],
  speaks: [
    [
      { "Sampled to": "10:00", "Moulding began": "10:16" },
      [
        [
          1,
          "Moulding began",
          "Moulding began 16 minutes after the last portion of the sample was taken; 15 are allowed. Look at the times, or sample again for the specimens.",
        ],
      ],
      C172,
    ],
    [
      { "Sampled to": "23:55", "Molding time": "00:15" },
      [
        [
          1,
          "Molding time",
          "Moulding began 20 minutes after the last portion of the sample was taken; 15 are allowed. Look at the times, or sample again for the specimens.",
        ],
      ],
      `${C172}, past midnight`,
    ],
  ],
};
