import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Concrete temp (°F)": 95 }, "from memory, ACI 305.1: 95 °F, 35 °C"],
    [{ "Concrete temperature": 72 }, "can only be °F, and is right"],
    [{ "Concrete temperature": 50 }, "may be °F or °C, so nothing is said"],
  ],
  speaks: [
    [
      { "Concrete temp (°F)": 96 },
      [
        [
          1,
          "Concrete temp (°F)",
          "The concrete, at 96 °F, is warmer than 95 °F. Look at what the specification says of hot weather.",
        ],
      ],
      "from memory, ACI 305.1: 95 °F, 35 °C",
    ],
    [
      { "Concrete temperature": "36 °C" },
      [
        [
          1,
          "Concrete temperature",
          "The concrete, at 36 °C, is warmer than 35 °C. Look at what the specification says of hot weather.",
        ],
      ],
      "from memory, ACI 305.1: 95 °F, 35 °C",
    ],
    [
      { "Concrete temperature (C)": 4 },
      [
        [
          1,
          "Concrete temperature (C)",
          "The concrete, at 4 °C, is colder than 5 °C. Look at what the specification says of cold weather.",
        ],
      ],
      "from memory, ASTM C94: 40 °F, 5 °C",
    ],
    [
      { "Concrete temp (°F)": 39 },
      [
        [
          1,
          "Concrete temp (°F)",
          "The concrete, at 39 °F, is colder than 40 °F. Look at what the specification says of cold weather.",
        ],
      ],
      "from memory, ASTM C94: 40 °F, 5 °C",
    ],
    [
      { "Concrete temp (°F)": 88, "Max concrete temp": 85 },
      [
        [
          1,
          "Concrete temp (°F)",
          "The concrete, at 88 °F, is warmer than 85 °F. Look at what the specification says of hot weather.",
        ],
      ],
      "limit of the sheet",
    ],
  ],
};
