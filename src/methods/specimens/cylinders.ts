import { exact } from "../../measure/rounding";

/** Cylinders as the strength test knows them, by their nominal diameter and length. */
export type CylinderSize = "6 × 12 in" | "4 × 8 in";

/**
 * Cylinders of which one strength test is the mean (ACI 318-19 26.12.1 as articles on it and on 318-08 tell
 * it; a trade journal of 2009).
 */
export const LEAST_CYLINDERS: Readonly<Record<CylinderSize, number>> = {
  "6 × 12 in": 2,
  "4 × 8 in": 3,
};

/**
 * Most that companion cylinders of one sample should differ by, % of their mean, by their number: ASTM C39,
 * made under field conditions for 6 × 12 in (from memory, to be verified).
 */
export const ACCEPTABLE_RANGE: Readonly<Record<CylinderSize, Readonly<Record<2 | 3, number>>>> = {
  "6 × 12 in": { 2: 8.0, 3: 9.5 },
  "4 × 8 in": { 2: 9.0, 3: 10.6 },
};

/** Mean difference of pairs up to which the testing is still acceptable (ACI 214R-11, an article on it). */
export const ACCEPTABLE_MEAN_DIFFERENCE = { us: 290, si: 2 } as const;

/** Diameters in inches and in millimetres, nominal and as people round them. */
const DIAMETERS: readonly (readonly [CylinderSize, ReadonlySet<number>])[] = [
  ["6 × 12 in", new Set([6, 150, 152])],
  ["4 × 8 in", new Set([4, 100, 102])],
];

/**
 * The size that a text names by its smaller number: "6x12", "4 × 8 in", "100 by 200 mm".
 *
 * @returns `undefined` for a size that the strength test does not name.
 */
export function cylinderSizeNamed(text: string): CylinderSize | undefined {
  const numbers = (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
  const diameter = Math.min(...numbers);
  return DIAMETERS.find(([, known]) => known.has(diameter))?.[0];
}

/**
 * How far companion cylinders of one sample lie apart, % of their mean.
 *
 * @param strengths Two or three, in one unit, above zero.
 */
export function rangeOfCylinders(strengths: readonly number[]): number {
  const mean = strengths.reduce((sum, strength) => sum + strength, 0) / strengths.length;
  return exact(((Math.max(...strengths) - Math.min(...strengths)) / mean) * 100);
}
