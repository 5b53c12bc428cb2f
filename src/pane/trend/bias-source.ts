import { biasOf, type Bias, type TestBy } from "../../acceptance/bias/bias";
import { shownValue } from "../../measure/cell-value";
import { isIssue } from "../../measure/issue";
import { FIELDS, type FieldId } from "../../reading/fields";
import type { CheckedArea } from "../state/checked-area";

/** More names than these are no technicians, meters or plants. */
const MOST_NAMES = 40;

/** A column that names who or what made each test. */
export interface NamingColumn {
  readonly index: number;
  readonly header: string;
}

/** Fields with words that say something else than who or what made a test. */
const SAYS_OTHERWISE: ReadonlySet<FieldId> = new Set<FieldId>([
  "sample",
  "load",
  "mix",
  "aggregate",
  "repeatOf",
  "checkOf",
  "alcoholUnit",
  "exposureClass",
  "cylinderSize",
  "loadDecision",
]);

/**
 * The columns of a checked table that may name who or what made the tests: words, two names at least, and
 * of each about two tests.
 */
export function namingColumns({ table, result }: CheckedArea): NamingColumn[] {
  const fieldAt = new Map(
    (Object.keys(result.columns) as FieldId[]).map((field) => [
      result.columns[field]!.index,
      field,
    ]),
  );
  const tested = validRecords(result);
  return table.headers.flatMap((header, index): NamingColumn[] => {
    const field = fieldAt.get(index);
    if (field && (FIELDS[field].kind !== "text" || SAYS_OTHERWISE.has(field))) return [];
    const names = tested.map((record) => nameIn(table.rows[record]?.[index])).filter(Boolean);
    const different = new Set(names).size;
    const named = different >= 2 && different <= MOST_NAMES && names.length >= 2 * different;
    // Numbers that nobody was recognised by are measurements.
    const numbers = names.every((name) => Number.isFinite(Number(name)));
    if (!named || (numbers && !field)) return [];
    return [{ index, header: shownValue(header) || String(index + 1) }];
  });
}

/** How each name of a column stands to the others, valid tests only; `undefined` where nobody can be compared. */
export function biasBy(
  { table, result }: CheckedArea,
  { index }: NamingColumn,
): readonly Bias[] | undefined {
  const tests = validRecords(result).flatMap((record): TestBy[] => {
    const { air, values } = result.results[record]!;
    const who = nameIn(table.rows[record]?.[index]);
    if (who === "" || air === undefined) return [];
    return [{ value: air, who, mix: values.mix ?? "" }];
  });
  const found = biasOf(tests);
  return isIssue(found) ? undefined : found;
}

function validRecords({ results }: CheckedArea["result"]): number[] {
  return results.flatMap(({ record, air }) => (air === undefined ? [] : [record]));
}

function nameIn(cell: Parameters<typeof shownValue>[0]): string {
  return shownValue(cell).trim();
}
