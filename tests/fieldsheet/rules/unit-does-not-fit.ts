import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Slump (in)": 4, "Concrete temp (°F)": 72, "Density (lb/ft³)": 115 }, "common practice"],
    [{ "Slump (mm)": 100, "Concrete temp (°C)": 22, "Density (kg/m³)": 1840 }, "common practice"],
    [{ "Slump (in)": "100 mm" }, "its own unit goes before that of the header"],
    [{ Slump: 100, "Concrete temperature": 22 }, "no unit is named"],
    [{ "Slump (in)": 0 }, "no slump at all can be"],
  ],
  speaks: [
    [
      { "Slump (in)": 100, "Concrete temp (°C)": 72, "Density (lb/ft³)": 1840 },
      [
        [
          1,
          "Slump (in)",
          "100 in cannot be, it lies from 0 to 12 in; it looks like mm. Write the unit behind the number, or correct the header.",
        ],
        [
          1,
          "Concrete temp (°C)",
          "72 °C cannot be, it lies from 0 to 60 °C; it looks like °F. Write the unit behind the number, or correct the header.",
        ],
        [
          1,
          "Density (lb/ft³)",
          "1840 lb/ft³ cannot be, it lies from 20 to 300 lb/ft³; it looks like kg/m³. Write the unit behind the number, or correct the header.",
        ],
      ],
      "no cone is higher than 12 in (ASTM C143); our own limits of temperature and density",
    ],
    [
      { "Slump (mm)": 1000 },
      [[1, "Slump (mm)", "1000 mm cannot be, it lies from 0 to 300 mm. Look at the record again."]],
      "no cone is higher than 300 mm (ASTM C143)",
    ],
  ],
};
