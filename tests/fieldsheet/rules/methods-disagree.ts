import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ "Gravimetric air": 7.5 }, "1.5 % apart is agreement, our own"],
    [{ Density: 144.5, "Theoretical density": 152.344 }, "derived from ASTM C138: 5.1487 %"],
    [
      { "Gravimetric air": 9, Aggregate: "lightweight" },
      "Kansas DOT KT-20: no guide with porous aggregate",
    ],
    [{ "Gravimetric air": 7, "Relative yield": 1.04 }, "1.0 % apart is agreement"],
  ],
  speaks: [
    [
      { Density: 140, "Theoretical density": 152.344, Aggregate: "crushed gravel" },
      [
        [
          1,
          "Density",
          "The density gives 8.1 % of air and the meter 6 %. Look at the batch masses, the tare, the moisture of the aggregate and the readings.",
        ],
      ],
      "derived from ASTM C138: 12.344 / 152.344",
    ],
    [
      { "Gravimetric air": 9, "Relative yield": 1.02 },
      [
        [
          1,
          "Gravimetric air",
          "The density gives 9 % of air and the meter 6 %. The yield, 1.02, is near 1 and speaks for the density: look first at the readings of the meter.",
        ],
      ],
      "our own reading of yield and density: 2 % is near",
    ],
    [
      { "Gravimetric air": 9, "Relative yield": 1.04 },
      [
        [
          1,
          "Gravimetric air",
          "The density gives 9 % of air and the meter 6 %. The yield, 1.04, is off to the same side and rests on the same density: look first at the tare, the full mass and the volume of the measure.",
        ],
      ],
      "our own reading of yield and density",
    ],
    [
      { "Gravimetric air": 3, "Relative yield": 0.96 },
      [
        [
          1,
          "Gravimetric air",
          "The density gives 3 % of air and the meter 6 %. The yield, 0.96, is off to the same side and rests on the same density: look first at the tare, the full mass and the volume of the measure.",
        ],
      ],
      "our own reading of yield and density",
    ],
    [
      { "Gravimetric air": 9, "Relative yield": 0.96 },
      [
        [
          1,
          "Gravimetric air",
          "The density gives 9 % of air and the meter 6 %. The yield, 0.96, is off to the other side: look first at the batch masses and the moisture of the aggregate.",
        ],
      ],
      "our own reading of yield and density",
    ],
    [
      { "Gravimetric air": 9, "Relative yield": 1.01 },
      [
        [
          1,
          "Gravimetric air",
          "The density gives 9 % of air and the meter 6 %. The yield, 1.01, is near 1 and speaks for the density: look first at the readings of the meter.",
        ],
      ],
      "our own reading of yield and density",
    ],
    [
      { "Gravimetric air": 9 },
      [
        [
          1,
          "Gravimetric air",
          "The density gives 9 % of air and the meter 6 %. Look at the batch masses, the tare, the moisture of the aggregate and the readings.",
        ],
      ],
      "our own reading of yield and density",
    ],
    [
      { Density: 140, "Theoretical density": 152.344 },
      [
        [
          1,
          "Density",
          "The density gives 8.1 % of air and the meter 6 %. Look at the batch masses, the tare, the moisture of the aggregate and the readings.",
        ],
      ],
      "derived from ASTM C138: 12.344 / 152.344",
    ],
  ],
};
