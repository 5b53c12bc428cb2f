import type { SpecifiedAirTable } from "./table";

/** The code gives ranges 3 % wide; what is specified is their middle, which the tolerance then spans. */
const middles = (...ranges: [low: number, high: number][]) =>
  ranges.map(([low, high]) => (low + high) / 2);

/** CSA A23.1, Table 4 (from memory). Exposures are the air content categories. */
export const CSA_A23_1: SpecifiedAirTable = {
  name: "CSA A23.1",
  sizes: [10, 14, 20, 28, 40].map((mm) => ({ mm, written: `${mm} mm` })),
  air: {
    "category 1": middles([6, 9], [5, 8], [5, 8], [4, 7], [4, 7]),
    "category 2": middles([5, 8], [4, 7], [4, 7], [3, 6], [3, 6]),
  },
};
