import type { Candidate } from "./candidates";
import type { Considered } from "./considered";
import type { FieldId } from "./fields";
import { fitOf } from "./fit";

/** Letters of the concrete's temperature and of the air's: English, Spanish, French and German. */
const PAIRS: readonly (readonly [concrete: string, air: string])[] = [
  ["ct", "at"],
  ["tc", "ta"],
  ["tb", "ta"],
  ["bt", "lt"],
];
const AS_A_PAIR = 66;

/** "CT" and "AT" say little alone; together, with temperatures below them, they are those of concrete and air. */
export function letteredTemperatures(columns: readonly Considered[]): readonly Considered[] {
  const headed = (text: string) =>
    columns.findIndex(
      ({ told: { own, titles, cells } }) =>
        own.text.replace(/[.\s]/g, "").toLowerCase() === text &&
        titles.length === 0 &&
        fitOf("concreteTemperature", cells, "temperature") > 0,
    );
  for (const [concrete, air] of PAIRS) {
    const [one, other] = [headed(concrete), headed(air)];
    if (one < 0 || other < 0) continue;
    return columns.map((column, at) =>
      at === one
        ? meaning(column, "concreteTemperature")
        : at === other
          ? meaning(column, "airTemperature")
          : column,
    );
  }
  return columns;
}

function meaning(column: Considered, field: FieldId): Considered {
  if (column.kept) return column;
  const words = [column.told.own.text];
  const candidate: Candidate = { field, score: AS_A_PAIR, opposite: false, words, fit: 1 };
  return { ...column, candidates: [candidate], other: undefined };
}
