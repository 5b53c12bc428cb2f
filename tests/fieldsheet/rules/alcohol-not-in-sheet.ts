import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [[{}, "the sheet has it"]],
  speaks: [
    [
      [{ "Alcohol (oz)": undefined }, {}],
      [
        [
          0,
          "",
          "The sheet has no column for alcohol, so every result is computed without a correction. From 2.5 pt (40 oz, 1.2 L) on it would be lower: add a column such as Alcohol (oz).",
        ],
      ],
      MANUAL + ", Table 1; said once",
    ],
  ],
};
