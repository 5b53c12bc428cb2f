import { AMERICAN_SIZES, type SpecifiedAirTable } from "./table";

/**
 * ACI 211.1-91, recommended air content. Moderate and severe from memory, read alike in five
 * copies; "none" is the entrapped air of concrete without admixture, from Adv. Civ. Eng. 2018,
 * 4398017, Table 3.
 */
export const ACI_211_1: SpecifiedAirTable = {
  name: "ACI 211.1",
  sizes: [...AMERICAN_SIZES, { in: 6, mm: 150, written: "6 in (150 mm)" }],
  air: {
    none: [3, 2.5, 2, 1.5, 1, 0.5, 0.3, 0.2],
    moderate: [6, 5.5, 5, 4.5, 4.5, 4, 3.5],
    severe: [7.5, 7, 6, 6, 5.5, 5, 4.5],
  },
};
