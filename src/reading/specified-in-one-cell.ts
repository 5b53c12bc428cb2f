import { isBlank, type CellValue } from "../measure/cell-value";
import { isIssue } from "../measure/issue";
import { specificationFromCell } from "../measure/specification";
import type { Candidate } from "./candidates";
import type { Considered } from "./considered";
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

const SAYS_SPECIFIED: ReadonlySet<Term> = new Set<Term>(["specified", "limit"]);

/**
 * "Spec" alone over "4.5-7.5" or "6 ± 1.5" is the specification of the air, which is what the sheet is
 * about; beside a slump it is asked about.
 */
export function specifiedInOneCell(
  considered: readonly Considered[],
  columns: readonly SheetColumn[],
): readonly Considered[] {
  const isSlump = ({ candidates: [best] }: Considered) => best?.field === "slump";
  const score = considered.some(isSlump) ? ASKED : READ;
  return considered.map((column, at) => {
    const { own, titles } = column.told;
    const isAlone = own.words.length > 0 && titles.length === 0 && !column.kept && !column.other;
    const says = own.words.every(({ terms }) => terms.some((term) => SAYS_SPECIFIED.has(term)));
    if (!isAlone || !says || column.candidates.length > 0) return column;
    if (!mostAreLimitsOfAir(columns[at]!.cells)) return column;
    const words = own.words.map(({ text }) => text);
    const found: Candidate = { field: "target", score, opposite: false, words, fit: 1 };
    return { ...column, candidates: [found] };
  });
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
