/** The tests of one mix: his, and those of the others. */
export interface SideBySide {
  readonly his: readonly number[];
  readonly others: readonly number[];
}

/** A mean difference, and how well it is known. */
export interface Difference {
  readonly difference: number;
  /** Absent where there are too few tests to know it. */
  readonly standardError?: number;
  readonly freedom?: number;
  /** Variance of the difference of one test of his and one of another's, of the same mix. */
  readonly scatter?: number;
}

/** The mean of numbers; there is one at least. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Two numbers nearer to each other than this share of them differ by the noise of binary fractions. */
const NOISE = 1e-13;

/** The sum of the squares of what numbers differ from their mean; 0 where they are all alike. */
export function squaresAboutMean(values: readonly number[]): number {
  const middle = mean(values);
  const apart = values.map((value) => value - middle);
  const alike = apart.every((difference) => Math.abs(difference) <= NOISE * Math.abs(middle));
  return alike ? 0 : apart.reduce((sum, difference) => sum + difference ** 2, 0);
}
