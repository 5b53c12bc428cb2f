import type { RuleCases } from "../rule-cases";

const ACI = "ACI 318-19 26.12.1, as articles on it and on 318-08 tell it";
const MAKE_MORE =
  "Make the missing ones from the same sample, or say that there is no strength test.";

export const cases: RuleCases = {
  silent: [
    [{ "Number of cylinders": 2, "Cylinder size": "6x12" }, ACI],
    [{ "Number of cylinders": 3, "Cylinder size": "4 × 8 in" }, ACI],
    [{ "Number of cylinders": 2, "Cylinder size": "150 x 300 mm" }, ACI],
    [{ "Number of cylinders": 2 }, `${ACI}; of an unknown size two are enough`],
    [{ "Number of cylinders": 2, "Cylinder size": "3 x 6" }, `${ACI} does not name this size`],
    [{ "Number of cylinders": 0, "Cylinder size": "4x8" }, "none made is no strength test"],
    [{ "Number of cylinders": null, "Cylinder size": "4x8" }, "a blank is not a zero"],
  ],
  speaks: [
    [
      { "Number of cylinders": 2, "Cylinder size": "4x8" },
      [
        [
          1,
          "Number of cylinders",
          `2 of 4 × 8 in are fewer than the 3 cylinders of which a strength test is the mean. ${MAKE_MORE}`,
        ],
      ],
      ACI,
    ],
    [
      { "Number of cylinders": 1, "Cylinder size": "152 mm by 305 mm" },
      [
        [
          1,
          "Number of cylinders",
          `1 of 6 × 12 in are fewer than the 2 cylinders of which a strength test is the mean. ${MAKE_MORE}`,
        ],
      ],
      ACI,
    ],
    [
      { "Number of cylinders": 1 },
      [
        [
          1,
          "Number of cylinders",
          `1 cylinder is too few: a strength test is the mean of 2 of 6 × 12 in or 3 of 4 × 8 in. ${MAKE_MORE}`,
        ],
      ],
      ACI,
    ],
  ],
};
