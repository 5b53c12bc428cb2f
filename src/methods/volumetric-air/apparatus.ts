import type { AlcoholUnit } from "./alcohol-correction";

/**
 * What a top section of the least size holds: 1.2 times a bowl of 0.075 ft³, 155.52 in³ (Louisiana
 * DOTD TR 202, 2008), derived with 28.875 in³ to the US pint.
 */
export const TOP_SECTION_HOLDS: Readonly<Record<AlcoholUnit, number>> = {
  pt: 5.39,
  oz: 86.2,
  L: 2.55,
};

/** The meter is standardised at least once in this many years ("common practice"). */
export const STANDARDISED_WITHIN_YEARS = 1;
