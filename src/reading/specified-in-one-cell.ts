import { isBlank, type CellValue } from "../measure/cell-value";
import { isIssue } from "../measure/issue";
import { specificationFromCell } from "../measure/specification";
import type { Considered } from "./considered";
import type { Word } from "./dictionary";
import type { FieldId } from "./fields";
import type { SheetColumn } from "./recognition";
import type { Term } from "./terms";

/** Read where no other column comes near. */
const READ = 66;
/** Below what is read: a slump in inches is specified by the same numbers. */
const ASKED = 52;
/** Share of the cells from which on a column is of specifications. */
const MOST = 0.65;
/** Limits of air lie between these, %. */
const [LEAST_AIR, MOST_AIR] = [1, 15];

const SAYS_SPECIFIED: ReadonlySet<Term> = new Set<Term>(["specified", "limit", "allowed"]);
const OF_AIR: ReadonlySet<Term> = new Set<Term>(["air", "content", "share", "of", "volumetric"]);
const ENDS: ReadonlySet<Term> = new Set<Term>(["low", "high"]);
const IN_TWO_COLUMNS: ReadonlySet<FieldId> = new Set<FieldId>(["low", "high"]);

/**
 * "Spec" alone over "4.5-7.5" or "6 ± 1.5" is the specification of the air, which is what the sheet is
 * about; where there is a slump, only right behind the air, else it is asked about. "Air limits" and
 * "Min/max air" over the same are the air's.
 */
export function specifiedInOneCell(
  considered: readonly Considered[],
  columns: readonly SheetColumn[],
): readonly Considered[] {
  const isSlump = ({ candidates: [best] }: Considered) => best?.field === "slump";
  const isAir = (column: Considered | undefined) => column?.candidates[0]?.field === "air";
  const hasSlump = considered.some(isSlump);
  return considered.map((column, at) => {
    const { own } = column.told;
    const said = saidBy(column);
    const isOpen = column.candidates.every(({ field }) => IN_TWO_COLUMNS.has(field));
    if (said === undefined || !isOpen || column.kept || column.other) return column;
    if (!mostAreLimitsOfAir(columns[at]!.cells)) return column;
    const words = own.words.map(({ text }) => text);
    const found = { field: "target", opposite: false, words, fit: 1 } as const;
    const isOfAir = said === "of air" || !hasSlump || isAir(considered[at - 1]);
    return { ...column, candidates: [{ ...found, score: isOfAir ? READ : ASKED }] };
  });
}

/** Whether a header says that limits stand below it, and of what. */
function saidBy({ told: { own, titles } }: Considered): "of air" | "of something" | undefined {
  const has = (set: ReadonlySet<Term>) => (word: Word) => word.terms.some((term) => set.has(term));
  const others = own.words.filter((word) => !has(OF_AIR)(word));
  const bothEnds = [...ENDS].every((end) => others.some(({ terms }) => terms.includes(end)));
  const says = bothEnds || others.some(has(SAYS_SPECIFIED));
  if (!says || !others.every((word) => has(SAYS_SPECIFIED)(word) || (bothEnds && has(ENDS)(word))))
    return undefined;
  const above = titles.flatMap(({ words }) => words);
  const all = [...own.words, ...above];
  if (all.some(({ terms }) => terms.includes("air"))) return "of air";
  return titles.length === 0 ? "of something" : undefined;
}

function mostAreLimitsOfAir(cells: readonly CellValue[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell));
  const limits = filled.filter((cell) => {
    const read = typeof cell === "string" ? specificationFromCell(cell) : undefined;
    if (read === undefined || isIssue(read)) return false;
    const { low = 0, high = Infinity } = read;
    return low >= LEAST_AIR && high <= MOST_AIR;
  });
  return filled.length > 0 && limits.length >= filled.length * MOST;
}
