import type { Candidate } from "./candidates";
import type { Considered } from "./considered";

/** By how much "final" without "reading" is less likely a reading, in hundredths of certainty. */
const LESS_LIKELY = 10;

/**
 * "Final" that stands under the title of the air, beside a first reading, is the result rather than one
 * more reading, unless it says so.
 */
export function finalAsResult(columns: readonly Considered[]): readonly Considered[] {
  const isFirst = ({ candidates: [best] }: Considered) => best?.field === "first";
  if (!columns.some(isFirst)) return columns;
  return columns.map((column) => {
    const { told, candidates } = column;
    const mayBeAir = candidates.some(({ field }) => field === "air");
    const saysReading = [told.own, ...told.titles].some(({ words }) =>
      words.some(({ terms }) => terms.includes("reading")),
    );
    if (!mayBeAir || saysReading) return column;
    const less = (candidate: Candidate) =>
      candidate.field === "final"
        ? { ...candidate, score: candidate.score - LESS_LIKELY }
        : candidate;
    return { ...column, candidates: candidates.map(less).sort((a, b) => b.score - a.score) };
  });
}
