import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Concrete temp (°F)": 95 }, "ACI 301-20 and ACI 305.1-14, secondary: 95 °F, 35 °C"],
    [{ "Concrete temperature (C)": 4 }, "UFGS 03311: over 72 in 4 °C, the least of all"],
    [{ "Concrete temp (°F)": 45, "Least dimension (in)": 72 }, "UFGS 03311: 45 °F to 72 in"],
    [{ "Concrete temp (°C)": 4, "Least dimension": "2 m" }, "UFGS 03311: 4 °C over 72 in"],
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
      "ACI 301-20 and ACI 305.1-14, secondary: 95 °F, 35 °C",
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
      "ACI 301-20 and ACI 305.1-14, secondary: 95 °F, 35 °C",
    ],
    [
      { "Concrete temperature (C)": 3 },
      [
        [
          1,
          "Concrete temperature (C)",
          "The concrete, at 3 °C, is colder than 4 °C. Look at what the specification says of cold weather.",
        ],
      ],
      "UFGS 03311: over 72 in 40 °F, 4 °C, the least of all",
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
      "UFGS 03311: over 72 in 40 °F, 4 °C, the least of all",
    ],
    [
      { "Concrete temp (°F)": 54, "Least dimension (in)": 8 },
      [
        [
          1,
          "Concrete temp (°F)",
          "The concrete, at 54 °F, is colder than 55 °F. Look at what the specification says of cold weather.",
        ],
      ],
      "UFGS 03311: 55 °F under 12 in",
    ],
    [
      { "Concrete temp (°F)": 49, "Least dimension": "3 ft" },
      [
        [
          1,
          "Concrete temp (°F)",
          "The concrete, at 49 °F, is colder than 50 °F. Look at what the specification says of cold weather.",
        ],
      ],
      "UFGS 03311: 50 °F to 36 in",
    ],
    [
      { "Concrete temp (°C)": 6, "Least dimension (mm)": 1200 },
      [
        [
          1,
          "Concrete temp (°C)",
          "The concrete, at 6 °C, is colder than 7 °C. Look at what the specification says of cold weather.",
        ],
      ],
      "UFGS 03311: 7 °C to 72 in",
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
