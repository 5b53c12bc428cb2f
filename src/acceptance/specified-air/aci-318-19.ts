import { AMERICAN_SIZES, type SpecifiedAirTable } from "./table";

const F2_AND_F3 = [7.5, 7, 6, 6, 5.5, 5, 4.5];

/**
 * ACI 318-19, Table 19.3.3.1 and the clause on strength below it (two copies that agree, and a
 * trade question and answer on the strength). ACI 318-25 was not looked at.
 */
export const ACI_318_19: SpecifiedAirTable = {
  name: "ACI 318-19",
  sizes: AMERICAN_SIZES,
  air: { F1: [6, 5.5, 5, 4.5, 4.5, 4, 3.5], F2: F2_AND_F3, F3: F2_AND_F3 },
  lower: { by: 1, above: { us: 5000, si: 35 } },
};
