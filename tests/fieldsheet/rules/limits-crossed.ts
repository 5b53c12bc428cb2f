import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [[{ Low: 5, High: 5 }, "a single value may be specified"]],
  speaks: [
    [
      { Low: 7, High: 5 },
      [[1, "Low", "The low limit, 7 %, lies above the high limit, 5 %. Look at both."]],
      "from the definition of a limit",
    ],
    [
      { Target: 6, Tolerance: -1 },
      [[1, "", "The low limit, 7 %, lies above the high limit, 5 %. Look at both."]],
      "from the definition of a limit",
    ],
  ],
};
