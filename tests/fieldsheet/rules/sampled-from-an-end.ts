import type { RuleCases } from "../rule-cases";

const C172 = "ASTM C172 and C94, exam pages: not the first or last 10 %";

export const cases: RuleCases = {
  silent: [
    [{ "Load discharged when sampled (%)": 101 }, "no share of a load"],
    [{ "Load discharged when sampled (%)": -1 }, "no share of a load"],
    [{ "Load discharged when sampled (%)": 10 }, C172],
    [{ "Load discharged when sampled (%)": 90 }, C172],
    [{ "Load discharged when sampled (%)": 50 }, C172],
  ],
  speaks: [
    [
      { "Load discharged when sampled (%)": 100 },
      [
        [
          1,
          "Load discharged when sampled (%)",
          "The sample was taken when 100 % of the load was discharged; a sample for acceptance is taken between 10 and 90 %. Sample again from the middle of the load.",
        ],
      ],
      C172,
    ],
    [
      { "Load discharged when sampled (%)": 0 },
      [
        [
          1,
          "Load discharged when sampled (%)",
          "The sample was taken when 0 % of the load was discharged; a sample for acceptance is taken between 10 and 90 %. Sample again from the middle of the load.",
        ],
      ],
      C172,
    ],
    [
      { "Load discharged when sampled (%)": 5 },
      [
        [
          1,
          "Load discharged when sampled (%)",
          "The sample was taken when 5 % of the load was discharged; a sample for acceptance is taken between 10 and 90 %. Sample again from the middle of the load.",
        ],
      ],
      C172,
    ],
    [
      { "Load discharged when sampled (%)": 95 },
      [
        [
          1,
          "Load discharged when sampled (%)",
          "The sample was taken when 95 % of the load was discharged; a sample for acceptance is taken between 10 and 90 %. Sample again from the middle of the load.",
        ],
      ],
      C172,
    ],
  ],
};
