import type { RuleCases } from "../rule-cases";

const C39 = "ASTM C39, from memory: 8.0 / 9.5 % of 6 × 12 in, 9.0 / 10.6 % of 4 × 8 in";
const header = "Cylinder 1 (psi)";
const said = (count: number, range: number, most: number): [number, string, string] => [
  1,
  header,
  `The ${count} cylinders of this sample differ by ${range} % of their mean; ${most} % should not be passed. Look at how they were made, capped and loaded before the mean is used.`,
];

export const cases: RuleCases = {
  silent: [
    [{ [header]: 0, "Cylinder 2 (psi)": 0 }, "a strength of none is no strength"],
    [{ [header]: -4180, "Cylinder 2 (psi)": 3820 }, "no strength is below zero"],
    // 320 of 4,000 is 8.0 %.
    [{ [header]: 4160, "Cylinder 2 (psi)": 3840, "Cylinder size": "6x12" }, C39],
    // 360 of 4,000 is 9.0 %; without a size the wider pair is held.
    [{ [header]: 4180, "Cylinder 2 (psi)": 3820 }, C39],
    [{ [header]: 4180, "Cylinder 2 (psi)": null }, "one cylinder differs from none"],
    [{ [header]: 4180, "Cylinder 2 (MPa)": 20 }, "two systems are not compared"],
    [{ [header]: 0, "Cylinder 2 (psi)": 4000 }, "a strength of none is no strength"],
  ],
  speaks: [
    [
      { [header]: 4161, "Cylinder 2 (psi)": 3839, "Cylinder size": "6 x 12" },
      // 322 of 4,000 is 8.05 %.
      [said(2, 8.1, 8)],
      C39,
    ],
    [
      { [header]: 4200, "Cylinder 2 (psi)": 3800 },
      // 400 of 4,000 is 10 %.
      [said(2, 10, 9)],
      C39,
    ],
    [
      {
        [header]: 4200,
        "Cylinder 2 (psi)": 4030,
        "Cylinder 3 (psi)": 3770,
        "Cylinder size": "4x8",
      },
      // 430 of 4,000 is 10.75 %.
      [said(3, 10.8, 10.6)],
      C39,
    ],
  ],
};
