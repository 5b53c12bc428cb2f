/**
 * The volumetric method written down once more, plainly and apart from `src`, so that the two can be
 * held against each other. Everything is a whole number of thousandths of a percent of air; amounts of
 * alcohol are counted in the marks of a measure, and their corrections stand in a table.
 */

/** One percent of air in thousandths. */
export const PERCENT = 1000;

/** A graduation of the neck, 0.25 %. */
export const QUARTER = 250;

/** The end of the scale that every neck reaches, 9 %. */
export const SCALE = 9000;

/** The units in which alcohol is measured, and what one mark of a measure stands for. */
export const MARK = {
  /** A quarter pint, which is 4 fl oz. */
  pt: 0.25,
  /** Marks every 4 fl oz at most (from memory, ASTM C173 apparatus). */
  oz: 4,
  /** Marks every 100 mL at most (same). */
  L: 0.1,
} as const;

export type Unit = keyof typeof MARK;
export const UNITS: readonly Unit[] = ["pt", "oz", "L"];

/**
 * What is subtracted for each mark, in thousandths, from the first mark on. ASTM C173 Table 1: 0.3 at
 * 3 pt, 0.6 at 4 pt, 0.9 at 5 pt; in ounces 48, 64 and 80; in litres 1.4, 1.9 and 2.4 (a meter maker's
 * manual, 2019); nothing below 2.5 pt, 40 oz or 1.2 L; straight lines between the rows.
 */
const PINTS_AND_OUNCES = [
  // 0.25 to 2.25 pt, 4 to 36 oz: nothing.
  ...[0, 0, 0, 0, 0, 0, 0, 0, 0],
  // 2.5, 2.75, 3 pt: from 0 at 2 pt to 300 at 3 pt, 75 for each mark.
  ...[150, 225, 300],
  // 3.25 to 4 pt, then 4.25 to 5 pt.
  ...[375, 450, 525, 600],
  ...[675, 750, 825, 900],
];
const LITRES = [
  // 0.1 to 1.1 L: nothing.
  ...[0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  // 1.2, 1.3, 1.4 L: from 0 at 0.9 L to 300 at 1.4 L, 60 for each mark.
  ...[180, 240, 300],
  ...[360, 420, 480, 540, 600],
  ...[660, 720, 780, 840, 900],
];
export const CORRECTIONS: Readonly<Record<Unit, readonly number[]>> = {
  pt: PINTS_AND_OUNCES,
  oz: PINTS_AND_OUNCES,
  L: LITRES,
};

/** What is subtracted for a number of marks, 0 for none. */
export function subtracted(unit: Unit, marks: number): number {
  return marks === 0 ? 0 : CORRECTIONS[unit][marks - 1]!;
}

/** Final reading less correction plus a whole percent for each cup. */
export function beforeRounding(reading: number, correction: number, cups: number): number {
  return reading - correction + cups * PERCENT;
}

/** The nearest multiple of a step; a half goes to the even multiple (ASTM E29). */
export function rounded(thousandths: number, step: number = QUARTER): number {
  const below = Math.floor(thousandths / step);
  const over = thousandths - below * step;
  if (2 * over < step) return below * step;
  if (2 * over > step) return (below + 1) * step;
  return (below % 2 === 0 ? below : below + 1) * step;
}

/** The reading that is final: the second if it is within a quarter of the first, else the third. */
export function finalOf(readings: readonly number[]): number {
  const [first, second, third] = readings as [number, number, number | undefined];
  return Math.abs(first - second) <= QUARTER ? second : third!;
}
