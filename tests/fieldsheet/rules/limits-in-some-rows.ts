import type { RuleCases } from "../rule-cases";

const said = (count: number) =>
  `Some tests have no limits, though others have, so they were compared with nothing; such tests: ${count}. Write the limits into each row.`;

export const cases: RuleCases = {
  silent: [
    [[{ Low: 4.5, High: 7.5 }, { Low: 4.5 }], "one limit is a limit"],
    [[{ Low: null }, { Low: null }], "that nothing was compared is said of the sheet as a whole"],
    [[{ Low: 4.5 }, { Low: null, Foam: 3 }], "a void test is compared with nothing"],
    [[{ Low: 4.5 }, { Low: "see plans" }], "not-a-number says it"],
  ],
  speaks: [
    [
      [
        { Low: 4.5, High: 7.5 },
        { Low: null, High: null },
        { Low: "", High: "" },
      ],
      [[0, "Low", said(2)]],
      "a cell that is merged over rows has its value in the first of them",
    ],
  ],
};
