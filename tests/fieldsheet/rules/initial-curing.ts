import type { RuleCases } from "../rule-cases";

const C31 = "ASTM C31, a forum quoting it and an exam page";

export const cases: RuleCases = {
  silent: [
    [{ "Min initial curing temperature (°F)": 60, "Max initial curing temperature (°F)": 80 }, C31],
    [{ "Max initial curing temperature (°C)": 27 }, C31],
    [
      { "Max initial curing temperature (°F)": 78, "Specified strength (psi)": 6000 },
      `${C31}: 68 to 78 °F from 6,000 psi on`,
    ],
  ],
  speaks: [
    [
      { "Min initial curing temperature (°F)": 59, "Max initial curing temperature (°F)": 81 },
      [
        [
          1,
          "Min initial curing temperature (°F)",
          "The specimens were as cold as 59 °F; in initial curing 60 °F are the least. Their strength may be lower than that of the concrete: say so with it.",
        ],
        [
          1,
          "Max initial curing temperature (°F)",
          "The specimens were as warm as 81 °F; in initial curing 80 °F are the most. Their later strength may be lower than that of the concrete: say so with it.",
        ],
      ],
      C31,
    ],
    [
      { "Max initial curing temperature (°F)": 79, "Specified strength (psi)": 6000 },
      [
        [
          1,
          "Max initial curing temperature (°F)",
          "The specimens were as warm as 79 °F; in initial curing 78 °F are the most. Their later strength may be lower than that of the concrete: say so with it.",
        ],
      ],
      `${C31}: 68 to 78 °F from 6,000 psi on`,
    ],
    [
      { "Min initial curing temperature (°C)": 19, "Specified strength (MPa)": 40 },
      [
        [
          1,
          "Min initial curing temperature (°C)",
          "The specimens were as cold as 19 °C; in initial curing 20 °C are the least. Their strength may be lower than that of the concrete: say so with it.",
        ],
      ],
      `${C31}: 20 to 26 °C from 40 MPa on`,
    ],
  ],
};
