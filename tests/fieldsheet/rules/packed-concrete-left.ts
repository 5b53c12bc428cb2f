import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Packed concrete": "no" }, "common practice"],
    [{ "Packed concrete": null }, "a blank says nothing"],
  ],
  speaks: [
    [
      { "Undisturbed concrete": "yes" },
      [
        [
          1,
          "Undisturbed concrete",
          "Undisturbed, packed concrete was left in the bowl. The test is void: repeat it and invert until all of it is free.",
        ],
      ],
      "common practice",
    ],
  ],
};
