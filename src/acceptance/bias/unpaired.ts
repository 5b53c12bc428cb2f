import { mean, squaresAboutMean, type Difference, type SideBySide } from "./side-by-side";

/**
 * Mean difference of his tests from the mean of the others' tests of the same mix.
 *
 * Each of his tests counts once. Two deviations are taken, his own and the others', each pooled
 * within the mixes; with one mix this is Welch's t test. Where he has no two tests of one mix, the
 * others' deviation stands for his too, and the other way round.
 *
 * @param mixes One at least, each with tests by both.
 * @see Welch 1947, with the degrees of freedom of Satterthwaite 1946.
 */
export function unpairedDifference(mixes: readonly SideBySide[]): Difference {
  const count = sum(mixes.map(({ his }) => his.length));
  const difference =
    sum(mixes.map(({ his, others }) => his.length * (mean(his) - mean(others)))) / count;
  const his = pooled(mixes.map((mix) => mix.his));
  const others = pooled(mixes.map((mix) => mix.others));
  // What his scatter and the others' add to the variance of the difference.
  const ofHis = 1 / count;
  const ofOthers = sum(mixes.map((mix) => (mix.his.length / count) ** 2 / mix.others.length));
  if (his.freedom > 0 && others.freedom > 0) {
    const [a, b] = [ofHis * variance(his), ofOthers * variance(others)];
    const freedom = (a + b) ** 2 / (a ** 2 / his.freedom + b ** 2 / others.freedom);
    const scatter = variance(his) + variance(others);
    return { difference, standardError: Math.sqrt(a + b), freedom, scatter };
  }
  const known = his.freedom > 0 ? his : others;
  if (known.freedom === 0) return { difference };
  const standardError = Math.sqrt((ofHis + ofOthers) * variance(known));
  return { difference, standardError, freedom: known.freedom, scatter: 2 * variance(known) };
}

interface Pooled {
  readonly squares: number;
  readonly freedom: number;
}

function pooled(samples: readonly (readonly number[])[]): Pooled {
  return {
    squares: sum(samples.map(squaresAboutMean)),
    freedom: sum(samples.map(({ length }) => length - 1)),
  };
}

function variance({ squares, freedom }: Pooled): number {
  return squares / freedom;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
