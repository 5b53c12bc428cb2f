import type { RuleCases } from "../rule-cases";

const C94 = "C94-90 and ready-mix sheets: once, then 30 revolutions";

export const cases: RuleCases = {
  silent: [
    [{ "Times water added": 1, "Revolutions after adding": null }, "not recorded"],
    [{ "Times water added": 1, "Revolutions after adding": 30 }, C94],
    [{ "Times water added": 0, "Revolutions after adding": 0 }, "nothing was added"],
    [{ "Site water": 0, "Revolutions after adding": 0 }, "nothing was added"],
  ],
  speaks: [
    [
      { "Site water": 5, "Times water added": 0, "Revolutions after adding": 20 },
      [
        [
          1,
          "Revolutions after adding",
          "The drum turned 20 times after the addition; at least 30 at mixing speed are asked for. Mix on, and test again.",
        ],
      ],
      "water was added, whatever the count says",
    ],
    [
      { "Revolutions after adding": 20 },
      [
        [
          1,
          "Revolutions after adding",
          "The drum turned 20 times after the addition; at least 30 at mixing speed are asked for. Mix on, and test again.",
        ],
      ],
      C94,
    ],
    [
      { "Times water added": 2, "Revolutions after adding": 40 },
      [
        [
          1,
          "Times water added",
          "Water was added 2 times; it is added once, on arrival. See who allowed it, and work out w/cm with all of it.",
        ],
      ],
      C94,
    ],
    [
      { "Site water": 5, "Revolutions after adding": 29 },
      [
        [
          1,
          "Revolutions after adding",
          "The drum turned 29 times after the addition; at least 30 at mixing speed are asked for. Mix on, and test again.",
        ],
      ],
      C94,
    ],
  ],
};
