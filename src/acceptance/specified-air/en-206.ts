import type { SpecifiedAirTable } from "./table";

/** EN 206, Table F.1 (from memory): the least air content, whatever the aggregate. */
export const EN_206: SpecifiedAirTable = {
  name: "EN 206",
  air: { XF2: [4], XF3: [4], XF4: [4] },
};
