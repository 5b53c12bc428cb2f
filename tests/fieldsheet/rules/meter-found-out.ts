import type { Cells, RuleCases } from "../rule-cases";

const PRACTICE = "common practice of quality systems";

const test = (date: string, checked: string, result: string, meter = "M-1"): Cells => ({
  Date: date,
  Meter: meter,
  "Meter checked": checked,
  "Meter check result": result,
});

export const cases: RuleCases = {
  silent: [
    [
      [test("2026-05-04", "2026-03-02", "pass"), test("2026-06-10", "2026-06-08", "pass")],
      PRACTICE,
    ],
    [
      [
        test("2026-05-04", "2026-03-02", "pass"),
        { ...test("2026-06-10", "2026-06-08", ""), Date: null },
      ],
      "a test without a day stands nowhere in time",
    ],
  ],
  speaks: [
    [
      [
        test("2026-03-02", "2026-03-02", "pass"),
        test("2026-06-08", "2026-06-08", "fail"),
        test("2026-06-11", "2026-06-11", "pass"),
      ],
      [
        [
          2,
          "Meter check result",
          "The meter failed its check of 2026-06-08; it last passed on 2026-03-02. Results since then are in doubt: 2 in this sheet. Find out by how much it was off, and judge them again.",
        ],
      ],
      `${PRACTICE}; counted by hand: rows 1 and 2, and not the one of the next check`,
    ],
    [
      [
        test("2026-02-27", "2026-01-05", "pass"),
        test("2026-03-02", "2026-03-02", "pass"),
        test("2026-05-04", "2026-03-02", "pass"),
        test("2026-05-05", "2026-03-02", "pass", "M-2"),
        test("2026-06-09", "2026-06-08", "fail"),
        test("2026-06-12", "2026-06-11", "pass"),
      ],
      [
        [
          5,
          "Meter check result",
          "The meter failed its check of 2026-06-08; it last passed on 2026-03-02. Results since then are in doubt: 3 in this sheet. Find out by how much it was off, and judge them again.",
        ],
      ],
      `${PRACTICE}; counted by hand: rows 2, 3 and 5`,
    ],
    [
      [test("2026-06-09", "2026-06-08", "failed"), test("2026-06-10", "2026-06-08", "failed")],
      [
        [
          1,
          "Meter check result",
          "The meter failed its check of 2026-06-08, and the sheet shows none before that it passed. Its earlier results are in doubt: 2 in this sheet. Find out since when and by how much it was off.",
        ],
      ],
      PRACTICE,
    ],
  ],
};
