import type { Candidate } from "./candidates";
import type { Considered } from "./considered";
import type { FieldId } from "./fields";

/** By how much the vessel of which the sheet speaks is likelier, in hundredths of certainty. */
const LIKELIER = 10;
const VESSELS: ReadonlySet<FieldId> = new Set<FieldId>(["bowlVolume", "measureVolume"]);

/**
 * The volume of a pot is that of the measure where the sheet weighs it, and that of the meter's bowl
 * where it tells of the meter's parts.
 */
export function whichVessel(columns: readonly Considered[]): readonly Considered[] {
  const speaksOf = (fields: readonly FieldId[]) =>
    columns.some(({ candidates: [best] }) => best !== undefined && fields.includes(best.field));
  const isWeighed = columns.some(({ told: { own } }) =>
    own.words.some(({ terms }) => terms.length === 1 && terms[0] === "weight"),
  );
  const ofMeter = speaksOf(["cupVolume", "meter", "meterCheck"]);
  if (isWeighed === ofMeter) return columns;
  const meant = isWeighed ? "measureVolume" : "bowlVolume";
  return columns.map((column) => {
    const vessels = column.candidates.filter(({ field }) => VESSELS.has(field));
    if (vessels.length < 2) return column;
    const weighed = (candidate: Candidate) =>
      VESSELS.has(candidate.field) && candidate.field !== meant
        ? { ...candidate, score: candidate.score - LIKELIER }
        : candidate;
    return { ...column, candidates: column.candidates.map(weighed) };
  });
}
