import type { Evidence } from "./evidence";
import { READING_FIELDS, type FieldId } from "./fields";
import { mayHaveUnit } from "./grammar";
import { GUARD_TERMS, type Term } from "./terms";
import type { Told } from "./told";
import { UNITS } from "./unit-spellings";

/** Fields that can decide whether a test stands, or its air. */
export const DECIDING: ReadonlySet<FieldId> = new Set<FieldId>([
  ...READING_FIELDS,
  "cups",
  "alcohol",
  "foam",
  "settle",
  "packed",
  "leak",
  "lateAlcohol",
]);

/** Words that speak of what decides a test, and the fields that they may mean. */
const SPEAKS_OF: Readonly<Partial<Record<Term, readonly FieldId[]>>> = {
  reading: READING_FIELDS,
  confirming: ["second"],
  cup: ["cups"],
  alcohol: ["alcohol", "lateAlcohol"],
  foam: ["foam"],
  settle: ["settle"],
  packed: ["packed"],
  dispersed: ["packed"],
  leak: ["leak"],
  tight: ["leak"],
};

/** Terms that leave open what a column is about; with any other known word its cells do not count. */
const LEAVE_OPEN: ReadonlySet<Term> = new Set<Term>([
  "number",
  "test",
  "result",
  "measured",
  "reported",
  "content",
  "total",
  "amount",
  "added",
  "left",
  "type",
  "time",
  "check",
  "first",
  "second",
  "third",
  "further",
  "initial",
  "final",
  "before",
  "after",
  "late",
  "low",
  "high",
  "not",
  "in-order",
  "volumetric",
  "meter",
  "bowl",
  "neck",
  "of",
  "share",
  "extent",
  "condition",
  "bulk",
  "by-pint",
  "by-gallon",
]);

/** The deciding fields of which the words of a column speak, as far as its unit can be theirs. */
export function decidingByWords({ own, unit, cells }: Told): readonly FieldId[] {
  // A correction in figures was worked out from what stands in other columns.
  const isCorrection = own.words.some(({ terms }) => terms.includes("correction"));
  if (isCorrection && cells.number > 0.65) return [];
  const isVolumeAlone = own.words.every(({ terms }) => terms.includes("volume"));
  // A time of the level or of a reading may be the one that it took to settle.
  const speaksOf = (term: Term): readonly FieldId[] => {
    if (term === "reading" && unit === "duration") return ["settle"];
    // "Vol" over amounts of alcohol is not the volume of a load.
    if (term === "volume" && isVolumeAlone && cells.asMeasuredOut) return ["alcohol"];
    return SPEAKS_OF[term] ?? [];
  };
  const fields = [
    ...own.words.flatMap(({ terms }) => terms.flatMap(speaksOf)),
    ...byBounds(own),
    ...byOrder(own),
  ];
  return [...new Set(fields)].filter((field) => mayHaveUnit(field, unit));
}

/** "> 6 min" and "over 2 div." are the bounds beyond which a test is void. */
function byBounds({ words }: Told["own"]): readonly FieldId[] {
  const isBeyond = words.some(({ terms }) => terms.includes("beyond") || terms.includes("more"));
  const text = words.map((word) => word.text).join(" ");
  if (!isBeyond) return [];
  return [
    ...(/\b6 ?(?:min|m\b)/.test(text) ? (["settle"] as const) : []),
    ...(/\b2 ?(?:div|mark|line|grad|raya|strich|teil)/.test(text) ? (["foam"] as const) : []),
  ];
}

const IN_ORDER: ReadonlySet<Term> = new Set<Term>([
  ...(["initial", "final", "first", "second", "third", "share"] as const),
]);

/** "2nd final" says of a reading which it is, and nothing else. */
function byOrder({ words }: Told["own"]): readonly FieldId[] {
  const isOfOne = words.some(({ terms }) => terms.includes("initial") || terms.includes("final"));
  const isAll = words.every(({ terms }) => terms.some((term) => IN_ORDER.has(term)));
  return isOfOne && isAll ? READING_FIELDS : [];
}

const isLiquid = (unit: string | undefined) =>
  unit !== undefined && UNITS.get(unit)?.dimension === "liquid";

/** Amounts of alcohol come again; what is another number in every row counts or names. */
function mayBeAmounts({ distinct, count }: Evidence): boolean {
  return count < 4 || distinct < count;
}

/**
 * The deciding fields that a column may hold by its unit and its cells, where no known word says what
 * it is about.
 *
 * @param missing Says which fields have no column yet.
 */
export function decidingByContents(
  { own, unit: written, cells }: Told,
  missing: (field: FieldId) => boolean,
): readonly FieldId[] {
  const unit = written ?? own.onlyUnit?.dimension;
  // What is ticked of the concrete in a word that is not known may be that it was left.
  const isUnknown = cells.yesNo > 0.65 && own.words.some(({ terms }) => terms.length === 0);
  const leavesOpen = (term: Term) =>
    LEAVE_OPEN.has(term) || GUARD_TERMS[term] || (isUnknown && term === "concrete");
  const open = own.words.every(({ terms }) => terms.length === 0 || terms.some(leavesOpen));
  if (!open) return [];
  return thinkable().filter(missing);

  function thinkable(): readonly FieldId[] {
    if (unit === "liquid" || isLiquid(cells.unit)) return ["alcohol", "lateAlcohol"];
    if (unit === "divisions") return ["first", "second", "final", "foam"];
    if (unit === "duration") return ["settle"];
    if (unit === "yes-no") return ["packed", "leak", "lateAlcohol"];
    if (cells.count === 0 || (unit !== undefined && unit !== "percent")) return [];
    if (cells.yesNo > 0.65) return ["packed", "leak", "lateAlcohol"];
    const { number, least, most, whole, quarters } = cells;
    if (number < 0.65 || least < 0) return [];
    const measured = cells.asMeasuredOut && mayBeAmounts(cells);
    // Of what was added late there is none in most tests.
    const alcohol: readonly FieldId[] = !measured
      ? []
      : least === 0 && whole < 1
        ? ["alcohol", "lateAlcohol"]
        : ["alcohol"];
    if (most > 15) return alcohol;
    if (/^\p{L}$/u.test(own.text)) return ["cups", "foam"];
    const countsOn = most - least < cells.count;
    const isRunning = least > 0 && countsOn && cells.distinct >= Math.max(3, cells.count);
    if (whole > 0.9 && !isRunning) return ["cups", ...alcohol];
    const varies = cells.distinct > 1 || cells.count < 3;
    const isRead = quarters > 0.6 && whole < 0.9 && varies;
    return [...(isRead ? READING_FIELDS : []), ...alcohol];
  }
}
