import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Batched: "10:00", Discharged: "11:30" }, "from memory, ASTM C94: 90 min"],
    [{ Batched: "10:00", Discharged: "11:50", "Discharge limit (min)": 120 }, "limit of the sheet"],
  ],
  speaks: [
    [
      { Batched: "10:00", Discharged: "11:31" },
      [
        [
          1,
          "Discharged",
          "Discharge ended 91 minutes after batching; 90 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      "from memory, ASTM C94",
    ],
    [
      { Batched: "23:30", Discharged: "01:05" },
      [
        [
          1,
          "Discharged",
          "Discharge ended 95 minutes after batching; 90 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      "from memory, ASTM C94, past midnight",
    ],
    [
      { Batched: "10:00", Discharged: "11:10", "Discharge limit": 60 },
      [
        [
          1,
          "Discharged",
          "Discharge ended 70 minutes after batching; 60 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      "limit of the sheet",
    ],
  ],
};
