import type { ReadArea } from "../../hosts/sheet-host";
import { sameValue } from "../../hosts/same-values";
import { isBlank, type CellValue } from "../../measure/cell-value";
import type { CheckedArea } from "./checked-area";

/** So far down the header of a table is looked for. */
const DEEPEST_HEADER = 100;

/** Where a test of a checked table, or its header, stands by now, positions in what was read by now. */
export interface TestPlace {
  readonly row: number;
  /** Where each column of the checked table stands by now; `undefined` for one that is gone. */
  readonly columns: readonly (number | undefined)[];
  /** Whether its cells are still what was checked; else it was known by its own id alone. */
  readonly unchanged: boolean;
}

/**
 * Finds a test of a checked table in the table as it is now, by the test's own cells: all of them under
 * their headers, or else its sample or load, where only one test has it.
 *
 * @param row Position of the test in the checked table; null for the header.
 * @param now The table as it is now.
 * @returns `undefined` where it cannot be told which test it is.
 */
export function whereTestIs(
  checked: CheckedArea,
  row: number | null,
  now: ReadArea,
): TestPlace | undefined {
  const header = headerNow(checked, now);
  if (!header || row === null) return header && { ...header, unchanged: true };
  const { columns } = header;
  const tests = checked.table.rows;
  const holds = (cells: readonly CellValue[], test: readonly CellValue[]) =>
    columns.every((at, i) => at === undefined || sameValue(cells[at]!, test[i]!));
  const rows = now.values.flatMap((cells, at) =>
    at > header.row && holds(cells, tests[row]!) ? [at] : [],
  );
  // Of tests with the very same cells, the second stays the second.
  const alikeAbove = tests.slice(0, row).filter((cells) => same(cells, tests[row]!)).length;
  const found = rows[Math.min(alikeAbove, rows.length - 1)];
  if (found !== undefined) return { row: found, columns, unchanged: true };

  const { sample, load } = checked.result.columns;
  const own = (sample ?? load)?.index;
  const id = own === undefined ? null : tests[row]![own]!;
  const at = own === undefined ? undefined : columns[own];
  if (own === undefined || at === undefined || isBlank(id)) return undefined;
  const named = (cells: readonly CellValue[], i: number) => sameValue(cells[i]!, id);
  const places = now.values.flatMap((cells, r) => (r > header.row && named(cells, at) ? [r] : []));
  const alone = places.length === 1 && tests.filter((cells) => named(cells, own)).length === 1;
  return alone ? { row: places[0]!, columns, unchanged: false } : undefined;
}

/** The row in which most headers of the checked table stand by now, and where each of them stands. */
function headerNow(
  { read, headerRow }: CheckedArea,
  now: ReadArea,
): { readonly row: number; readonly columns: readonly (number | undefined)[] } | undefined {
  const before = read.values[headerRow]!;
  let best: { row: number; columns: (number | undefined)[]; found: number } | undefined;
  now.values.slice(0, DEEPEST_HEADER).forEach((cells, row) => {
    const taken = new Set<number>();
    const columns = before.map((header) => {
      if (isBlank(header)) return undefined;
      const at = cells.findIndex((cell, i) => !taken.has(i) && sameValue(cell, header));
      if (at >= 0) taken.add(at);
      return at >= 0 ? at : undefined;
    });
    if (taken.size > (best?.found ?? 0)) best = { row, columns, found: taken.size };
  });
  return best;
}

function same(one: readonly CellValue[], other: readonly CellValue[]): boolean {
  return one.every((value, i) => sameValue(value, other[i]!));
}
