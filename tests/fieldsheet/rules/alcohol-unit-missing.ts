import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Alcohol (oz)": undefined, Alcohol: "48 oz" }, "the unit is in the cell"],
    [{ "Alcohol (oz)": undefined, Alcohol: 48, "Alcohol unit": "oz" }, "the unit is beside it"],
    [{ "Alcohol (oz)": undefined, Alcohol: 0 }, "none needs no unit"],
  ],
  speaks: [
    [
      { "Alcohol (oz)": undefined, Alcohol: 48 },
      [
        [
          1,
          "Alcohol",
          '48 has no unit. Give "pt", "oz", "L" or "mL", or write the amount as "48 oz".',
        ],
      ],
      "units are never guessed",
    ],
    [
      { "Alcohol (oz)": "3 gal" },
      [
        [
          1,
          "Alcohol (oz)",
          "“gal” is not a unit of alcohol that the correction table lists. Use pt, oz, L or mL.",
        ],
      ],
      "ASTM C173 Table 1 has no gallons",
    ],
  ],
};
