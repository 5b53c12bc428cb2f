import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{}, "from the definition of the method"],
    [{ "First reading": "about 6" }, "not-a-number says it"],
    [{ "First reading": null, Foam: 3 }, "the test is void and needs no reading"],
  ],
  speaks: [
    [
      { "First reading": null },
      [
        [
          1,
          "First reading",
          "There is no meter reading. Enter it, or clear the row if no test was made.",
        ],
      ],
      "from the definition of the method",
    ],
    [
      { "First reading": undefined, "Second reading": undefined, "Final reading": null },
      [
        [
          1,
          "Final reading",
          "There is no meter reading. Enter it, or clear the row if no test was made.",
        ],
      ],
      "from the definition of the method",
    ],
  ],
};
