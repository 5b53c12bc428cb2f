import type { AlcoholUnit } from "./alcohol-correction";

/** Inverting goes on for at least this long in all, s (meter maker's manual, 2019, describing C173). */
export const INVERSION_IN_ALL = 45;

/** The meter stays upside down for at most this long at a time, s (same manual). */
export const INVERSION_AT_A_TIME = 5;

/** The meter is rolled for about this long each time, s (same manual). */
export const ROLLING = 60;

/** At least this much water goes in before the alcohol ("common practice"). */
export const WATER_FIRST: Readonly<Record<AlcoholUnit, number>> = { pt: 1, oz: 16, L: 0.5 };

/** Strength of the isopropyl alcohol that the correction is for, % by volume ("common practice"). */
export const ALCOHOL_STRENGTH = 70;

/** Larger aggregate is removed from the sample by wet sieving (Louisiana DOTD TR 202, 2008). */
export const LARGEST_AGGREGATE = { in: 1.5, mm: 37.5 } as const;
