import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Date: "2026-06-09", "Meter checked": "2025-06-09" }, "a year to the day, common practice"],
    [
      { Date: "2024-03-01", "Meter checked": "2023-03-01" },
      "a year with a leap day, common practice",
    ],
  ],
  speaks: [
    [
      { Date: "2026-06-10", "Meter checked": "2025-06-09" },
      [
        [
          1,
          "Meter checked",
          "The meter was last checked on 2025-06-09, more than a year before the test on 2026-06-10. Tests in the sheet that rest on it: 1. Have the meter checked.",
        ],
      ],
      "common practice",
    ],
    [
      [1, 2, 3].map(() => ({ Date: "2026-06-10", Meter: "M-3", "Meter checked": "2025-01-15" })),
      [
        [
          1,
          "Meter checked",
          "The meter was last checked on 2025-01-15, more than a year before the test on 2026-06-10. Tests in the sheet that rest on it: 3. Have the meter checked.",
        ],
      ],
      "one check is one cause",
    ],
  ],
};
