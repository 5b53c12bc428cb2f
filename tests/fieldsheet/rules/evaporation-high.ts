import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      {
        "Concrete temperature (°F)": 90,
        "Air temperature (°F)": 90,
        Humidity: -5,
        "Wind (mph)": 25,
      },
      "no humidity",
    ],
    [
      {
        "Concrete temperature (°F)": 90,
        "Air temperature (°F)": 90,
        Humidity: 105,
        "Wind (mph)": 25,
      },
      "no humidity",
    ],
    [
      {
        "Concrete temp (°F)": 80,
        "Air temp (°F)": 80,
        "Relative humidity (%)": 50,
        "Wind (mph)": 10,
      },
      "retarder literature: care from 0.20 lb/ft²/h, 1.0 kg/m²/h; 0.1431",
    ],
    [
      {
        "Concrete temp (°C)": 30,
        "Air temp (°C)": 30,
        "Relative humidity (%)": 50,
        "Wind (km/h)": 16,
      },
      "retarder literature: care from 0.20 lb/ft²/h, 1.0 kg/m²/h; 0.7981",
    ],
    [
      {
        "Concrete temp (°F)": 87,
        "Air temp (°F)": 80,
        "Relative humidity (%)": 50,
        "Wind (km/h)": 12,
      },
      "two systems are not mixed",
    ],
  ],
  speaks: [
    [
      {
        "Concrete temp (°F)": 80,
        "Air temp (°F)": 80,
        "Relative humidity (%)": 0.5,
        "Wind (mph)": 10,
      },
      [
        [
          1,
          "Relative humidity (%)",
          "A humidity of 0.5 looks like 50 % in a cell with a percentage format. Type 50 into a cell with a number format.",
        ],
      ],
      "our own rule: a cell that shows 50 % holds 0.5",
    ],
    [
      {
        "Concrete temp (°F)": 87,
        "Air temp (°F)": 80,
        "Relative humidity (%)": 50,
        "Wind (mph)": 12,
      },
      [
        [
          1,
          "Wind (mph)",
          "0.24 lb/ft²/h of water evaporate, and care is due from 0.2 lb/ft²/h on. Shade, screen or fog the concrete, and begin curing at once.",
        ],
      ],
      "retarder literature: care from 0.20 lb/ft²/h, 1.0 kg/m²/h; 0.2435",
    ],
    [
      {
        "Concrete temp (°C)": 35,
        "Air temp (°C)": 32,
        "Relative humidity (%)": 25,
        "Wind (km/h)": 24,
      },
      [
        [
          1,
          "Wind (km/h)",
          "2.24 kg/m²/h of water evaporate, and care is due from 1 kg/m²/h on. Shade, screen or fog the concrete, and begin curing at once.",
        ],
      ],
      "retarder literature: care from 0.20 lb/ft²/h, 1.0 kg/m²/h; Uno 1998, SI: 2.2443",
    ],
  ],
};
