import type { RuleCases } from "../rule-cases";

const OLD = "trade news: 90 min and 300 revolutions in old editions of ASTM C94";

export const cases: RuleCases = {
  silent: [
    [{ Revolutions: 310, "Delivery standard": "EN 206" }, "no limit of that standard"],
    [{ Batched: "10:00", "Discharge limit": 60 }, "not discharged yet"],
    [{ Revolutions: 300, "Delivery standard": "ASTM C94-98" }, OLD],
    [
      { Batched: "10:00", Discharged: "12:31" },
      "trade news on C94/C94M-21: no limit that nobody stated",
    ],
    [{ Batched: "10:00", Discharged: "11:50", "Discharge limit (min)": 120 }, "limit of the sheet"],
    [
      { Batched: "10:00", Discharged: "11:45", "Delivery standard": "ASTM C94-21" },
      "trade news on C94/C94M-21: no 90 min any more",
    ],
    [{ Batched: "10:00", Discharged: "11:30", "Delivery standard": "C94-98" }, OLD],
    [
      { Revolutions: 340, "Delivery standard": "C94/C94M-17a" },
      "trade news: 300 revolutions left ASTM C94 in 2013",
    ],
  ],
  speaks: [
    [
      { Batched: "10:00", Discharged: "11:31", "Delivery standard": "C94-98" },
      [
        [
          1,
          "Discharged",
          "Discharge ended 91 minutes after batching; 90 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      OLD,
    ],
    [
      { Batched: "23:30", Discharged: "01:05", "Discharge limit": 90 },
      [
        [
          1,
          "Discharged",
          "Discharge ended 95 minutes after batching; 90 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      "limit of the sheet, past midnight",
    ],
    [
      {
        Batched: "10:00",
        Discharged: "11:10",
        "Discharge limit": 60,
        "Delivery standard": "C94-98",
      },
      [
        [
          1,
          "Discharged",
          "Discharge ended 70 minutes after batching; 60 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      "limit of the sheet before that of an edition",
    ],
    [
      { Revolutions: 310, "Delivery standard": "ASTM C94-98" },
      [
        [
          1,
          "Revolutions",
          "The drum turned 310 times; 300 are allowed. See whether the purchaser agreed to more.",
        ],
      ],
      OLD,
    ],
  ],
};
