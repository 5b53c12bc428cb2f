import type { RuleCases } from "../rule-cases";

const MANUAL = "a meter maker's manual (2019), describing ASTM C173";

export const cases: RuleCases = {
  silent: [
    [{ Foam: 3, "Reported air": null }, MANUAL],
    [{ "Reported air": 6 }, MANUAL],
  ],
  speaks: [
    [
      { Foam: 3, "Reported air": 6 },
      [
        [
          1,
          "Reported air",
          "6 % is reported, but the test is void. Take the result out, and report that of the repeat.",
        ],
      ],
      MANUAL,
    ],
  ],
};
