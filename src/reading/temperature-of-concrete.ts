import { SURE, type Candidate } from "./candidates";
import type { Considered } from "./considered";
import type { FieldId } from "./fields";

/** A temperature alone is asked about; beside that of the air it is the concrete's. */
const BESIDE_THE_AIR = 66;

const OTHERS: ReadonlySet<FieldId> = new Set<FieldId>([
  "airTemperature",
  "temperatureLow",
  "temperatureHigh",
]);

/** "Temp." is the temperature of the concrete where another column is plainly that of the air, or its limit. */
export function temperatureOfConcrete(columns: readonly Considered[]): readonly Considered[] {
  const isOther = ({ candidates: [best] }: Considered) =>
    best !== undefined && OTHERS.has(best.field) && best.score >= SURE;
  if (!columns.some(isOther)) return columns;
  return columns.map((column) => {
    const [best] = column.candidates;
    if (best?.field !== "concreteTemperature" || best.score >= SURE || best.fit < 0) return column;
    if (column.told.own.words.some(({ terms }) => terms.length === 0)) return column;
    const surer: Candidate = { ...best, score: BESIDE_THE_AIR };
    return { ...column, candidates: [surer, ...column.candidates.slice(1)] };
  });
}
