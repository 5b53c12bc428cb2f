import type { ListedSize, SpecifiedAirTable } from "./table";

const SIZES: readonly ListedSize[] = [8, 16, 32, 63].map((mm) => ({ mm, written: `${mm} mm` }));
const LEAST = [5.5, 4.5, 4, 3.5];

/**
 * DIN 1045-2, least mean air content (two German trade pages that agree). From consistency class F4 on
 * it is 1 % more, which is left to the specification.
 */
export const DIN_1045_2: SpecifiedAirTable = {
  name: "DIN 1045-2",
  sizes: SIZES,
  air: { XF2: LEAST, XF3: LEAST, XF4: LEAST },
};
