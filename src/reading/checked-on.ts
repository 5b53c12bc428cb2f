import type { Considered } from "./considered";

/** Below what is read: asked about. */
const ASKED = 52;

/** "Tested on" right beside the meter's number may be the day of the test or that of the meter's check. */
export function checkedOn(columns: readonly Considered[]): readonly Considered[] {
  return columns.map((column, at) => {
    const [best, ...others] = column.candidates;
    if (best?.field !== "date" || columns[at - 1]?.candidates[0]?.field !== "meter") return column;
    const terms = [column.told.own, ...column.told.titles].flatMap(({ words }) =>
      words.flatMap((word) => word.terms),
    );
    if (!terms.includes("test") || terms.includes("date")) return column;
    return { ...column, candidates: [{ ...best, score: Math.min(best.score, ASKED) }, ...others] };
  });
}
