import { SURE, type Candidate } from "./candidates";
import type { Considered } from "./considered";
import type { FieldId } from "./fields";
import { fitOf } from "./fit";
import type { Term } from "./terms";

const FINAL: ReadonlySet<Term> = new Set<Term>(["final", "end"]);
const ORDINALS: readonly Term[] = ["first", "second", "third"];
const BESIDE: ReadonlySet<Term> = new Set<Term>([
  "reading",
  "result",
  "share",
  ...FINAL,
  ...ORDINALS,
]);

/** As sure as a header that says it outright. */
const SAID = 80;

/** A column of a reading that comes after the first one. */
interface Later {
  readonly at: number;
  /** Which of the final readings it says it is; 1 where it does not. */
  readonly number: number;
}

/**
 * The readings after an initial one, by their order: of "Initial, Final 1, Final 2" the second and the third; of
 * "Initial, Final, 3rd" the final one is the second, for another was taken after it.
 */
export function laterReadings(columns: readonly Considered[]): readonly Considered[] {
  const isSure = (field: FieldId) => (column: Considered) => {
    const [best] = column.candidates;
    return best?.field === field && best.score >= SURE && best.fit >= 0;
  };
  if (columns.some(isSure("second"))) return columns;
  const finals = columns.flatMap((column, at) => finalOf(column, at) ?? []);
  if (finals.length === 0) return columns;
  const first = firstOf(columns, isSure("first"), finals);
  if (first < 0) return columns;
  const later = finals.filter(({ at }) => at > first);
  const third = columns.findIndex((column) => isSure("third")(column) || isThirdAlone(column));
  const numbers = later.map(({ number }) => number).join();
  const [one, two] = later;
  if (one && two && numbers === "1,2") {
    return withFields(columns, { [first]: "first", [one.at]: "second", [two.at]: "third" });
  }
  if (one && numbers === "1" && third > one.at) {
    return withFields(columns, { [first]: "first", [one.at]: "second", [third]: "third" });
  }
  // "Anfang %, Ende %" may be times without the unit.
  const isInPercent = (at: number) => columns[at]!.told.unit === "percent";
  if (one && numbers === "1" && isInPercent(first) && isInPercent(one.at)) {
    return withFields(columns, { [first]: "first", [one.at]: "final" });
  }
  return columns;
}

/** The column of the initial reading; "start" alone is a time, where nothing says the end of a reading. */
function firstOf(
  columns: readonly Considered[],
  isFirst: (column: Considered) => boolean,
  finals: readonly Later[],
): number {
  const sure = columns.findIndex(isFirst);
  if (sure >= 0) return sure;
  return columns.findIndex(({ told, candidates }, at) => {
    const [word, more] = withoutShare(told);
    const isInitial = word?.terms.includes("initial") === true && more === undefined;
    return isInitial && candidates.length === 0 && fitsAReading(told) && at < finals[0]!.at;
  });
}

function finalOf({ told, kept }: Considered, at: number): Later | undefined {
  const terms = told.own.words.map((word) => word.terms);
  const isPlain = terms.every((each) => each.some((term) => BESIDE.has(term)));
  const isFinal = terms.some((each) => each.some((term) => FINAL.has(term)));
  if (kept || !isPlain || !isFinal) return undefined;
  const number = Math.max(
    ORDINALS.findIndex((one) => terms.some((each) => each.includes(one))),
    0,
  );
  // The last of three is often blank, or said to be not needed.
  return number > 0 || fitsAReading(told) ? { at, number: number + 1 } : undefined;
}

const AFTER_ANOTHER: ReadonlySet<Term> = new Set<Term>([
  ...(["reading", "after", "more", "roll", "volumetric", "of", "share"] as const),
]);

/** "3. Wert", and "reading after another roll": the third of what stands before it. */
function isThirdAlone({ told, kept }: Considered): boolean {
  const terms = told.own.words.map((word) => word.terms);
  const isAfterAnother =
    ["reading", "more", "roll"].every((term) =>
      terms.some((each) => each.includes(term as Term)),
    ) && terms.every((each) => each.some((term) => AFTER_ANOTHER.has(term)));
  if (isAfterAnother) return !kept;
  const [word, more] = withoutShare(told);
  return (
    !kept && more === undefined && word?.terms.includes("third") === true && fitsAReading(told)
  );
}

/** "Anfang %": the sign is a word as well where the cells hold percentages. */
function withoutShare({ own }: Considered["told"]): Considered["told"]["own"]["words"] {
  return own.words.filter(({ terms }) => !terms.includes("share"));
}

function fitsAReading({ cells, unit }: Considered["told"]): boolean {
  return fitOf("first", cells, unit) >= 0 && (unit === undefined || unit === "percent");
}

function withFields(
  columns: readonly Considered[],
  fields: Readonly<Record<number, FieldId>>,
): readonly Considered[] {
  return columns.map((column, at) => {
    const field = fields[at];
    if (field === undefined || column.kept) return column;
    const { told } = column;
    const words = told.own.words.map(({ text }) => text);
    const fit = fitOf(field, told.cells, told.unit);
    const said: Candidate = { field, score: SAID, opposite: false, words, fit };
    return { ...column, candidates: [said], other: undefined };
  });
}
