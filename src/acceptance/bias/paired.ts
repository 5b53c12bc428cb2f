import { mean, squaresAboutMean, type Difference, type SideBySide } from "./side-by-side";

/**
 * Mean difference of split samples: in each sample, the mean of his tests less that of the others.
 *
 * @param samples One at least, each with tests by both.
 * @see Paired t test: d ± t s / √n.
 */
export function pairedDifference(samples: readonly SideBySide[]): Difference {
  const differences = samples.map(({ his, others }) => mean(his) - mean(others));
  const difference = mean(differences);
  const freedom = differences.length - 1;
  if (freedom === 0) return { difference };
  const variance = squaresAboutMean(differences) / freedom;
  return { difference, standardError: Math.sqrt(variance / differences.length), freedom };
}
