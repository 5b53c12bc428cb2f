import type { Cells, RuleCases } from "../rule-cases";

const ACI = "ACI 214R-11, as an article on it tells: 290 psi (2 MPa) on average";

/** Ten pairs that differ by 80 and by 500 + more in turn: (80 + 500 + more) / 2 on average. */
const pairs = (more: number, count = 10): Cells[] =>
  Array.from({ length: count }, (_, i) => ({
    "Cylinder 1 (psi)": 5000,
    "Cylinder 2 (psi)": 5000 + (i % 2 === 0 ? 80 : -500 - more),
  }));

const inMPa = (difference: number): Cells[] =>
  Array.from({ length: 10 }, () => ({
    "Cylinder 1 (MPa)": 40,
    "Cylinder 2 (MPa)": 40 - difference,
  }));

export const cases: RuleCases = {
  silent: [
    [pairs(0), ACI],
    [pairs(400, 9), "fewer than ten pairs, our own choice"],
    [inMPa(2), ACI],
  ],
  speaks: [
    [
      pairs(2),
      [
        [
          0,
          "Cylinder 1 (psi)",
          "The 10 pairs of cylinders differ by 291 psi on average; up to 290 psi is held to be acceptable. Look at how specimens are made, cured and tested.",
        ],
      ],
      ACI,
    ],
    [
      inMPa(2.5),
      [
        [
          0,
          "Cylinder 1 (MPa)",
          "The 10 pairs of cylinders differ by 2.5 MPa on average; up to 2 MPa is held to be acceptable. Look at how specimens are made, cured and tested.",
        ],
      ],
      ACI,
    ],
  ],
};
