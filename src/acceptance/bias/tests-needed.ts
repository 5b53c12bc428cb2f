import { normalPointAt } from "../normal-distribution";

/** Chance to be wrong where nobody differs, either way, and chance to notice where somebody does. */
const BY_CHANCE = 0.05;
const NOTICED = 0.8;

/**
 * How many tests he, and as many others of the same mixes, would have to make so that a difference as
 * large as the one that was seen would be told from chance: at 5 % either way, noticed four times in five.
 *
 * @param difference Not zero.
 * @param scatter Variance of the difference of one test of his and one of another's.
 * @returns Not rounded; it is rounded up to be used. Infinite for no difference.
 * @see (z₀.₉₇₅ + z₀.₈)² scatter / difference², with z₀.₉₇₅² / 4 for a deviation that is not known
 *   beforehand (Guenther 1981, from memory): within a third of a test of what the t test itself needs from 5 tests on.
 */
export function testsNeeded(difference: number, scatter: number): number {
  const z = normalPointAt(1 - BY_CHANCE / 2);
  const both = z + normalPointAt(NOTICED);
  return (both ** 2 * scatter) / difference ** 2 + z ** 2 / 4;
}
