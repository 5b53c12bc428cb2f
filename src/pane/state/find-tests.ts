import type { CellPlace, ReadArea, SheetHost } from "../../hosts/sheet-host";
import { Problem } from "../../measure/problem";
import { recogniseColumns } from "../../reading/columns";
import { READING_FIELDS } from "../../reading/fields";
import { findTable } from "../../reading/layout";

/** Rows of a sheet that are looked through for headers. */
const TOP_ROWS = 120;

/** A sheet that holds tests, and a cell in their header. */
export interface SheetWithTests {
  readonly sheetName: string;
  readonly place: CellPlace;
}

/** The tests that were found, or the other sheets that hold some. */
export type FoundTests =
  { readonly read: ReadArea } | { readonly elsewhere: readonly SheetWithTests[] };

/**
 * Finds the tests that are meant: those around the selected cell, else the first ones on the sheet in
 * front, else the other sheets that hold some.
 *
 * @throws Problem what the table around the selected cell lacks, where no sheet holds tests; and those
 *   of the host.
 */
export async function findTests(
  host: SheetHost,
  progress: (rows: number) => void,
): Promise<FoundTests> {
  let lacking: unknown;
  try {
    const read = await host.read("table", progress);
    headerPlace(read);
    return { read };
  } catch (problem) {
    if (!isLackOfTests(problem)) throw problem;
    lacking = problem;
  }
  const [front, ...others] = (await host.sheetTops(TOP_ROWS)).map(testsOn);
  if (front) return { read: await host.read("table", progress, front.place) };
  const elsewhere = others.filter((sheet) => sheet !== undefined);
  if (elsewhere.length > 0) return { elsewhere };
  throw lacking;
}

function testsOn(top: ReadArea): SheetWithTests | undefined {
  try {
    return { sheetName: top.area.sheetName, place: headerPlace(top) };
  } catch (problem) {
    if (isLackOfTests(problem)) return undefined;
    throw problem;
  }
}

/** A cell in the header of a table of tests. @throws Problem `no-header-row`, `no-readings-column`. */
function headerPlace({ area, values }: ReadArea): CellPlace {
  const { table, headerRow } = findTable(values);
  const columns = recogniseColumns(table.headers);
  const reading = READING_FIELDS.map((field) => columns[field]).find((column) => column);
  if (!reading) throw new Problem("no-readings-column");
  return {
    sheetId: area.sheetId,
    row: area.row + headerRow,
    column: area.column + reading.index,
  };
}

function isLackOfTests(problem: unknown): problem is Problem {
  return problem instanceof Problem && LACK_OF_TESTS.has(problem.id);
}

const LACK_OF_TESTS: ReadonlySet<string> = new Set([
  "selection-empty",
  "no-header-row",
  "no-readings-column",
]);
