import type { SpecifiedAirTable } from "./table";

/** Pavements of the US Army and Air Force, UFC 3-250-04FA: the middle of ± 1 %, whatever the aggregate. */
export const UFC_3_250_04FA: SpecifiedAirTable = {
  name: "UFC 3-250-04FA",
  air: { frost: [6], "no frost": [5] },
};
