import { checkTests } from "../fieldsheet/check-table";
import type { CheckOptions } from "../fieldsheet/check-options";
import type { ReadingOptions } from "../reading/read-table";
import type { CellValue } from "../measure/cell-value";
import { isIssue, issueSentence, type Issue } from "../measure/issue";
import { say } from "../messages/pane-catalogue";
import { findTestsIn, tableIn, type TestsInBlock } from "../reading/read-sheet";
import { stackedTables } from "../reading/stacked-tables";
import type { Said } from "./said";
import { type CheckedPlace, placeInSheet, saidOfRows, saidOfSheet } from "./said-of-check";

/** Issues that say that a sheet holds something else than tests. */
const NO_TESTS: ReadonlySet<string> = new Set(["no-header-row", "no-readings-column"]);

/** A sheet with what is said of it. */
export interface CheckedSheet {
  readonly hasTests: boolean;
  readonly said: readonly Said[];
}

/**
 * Finds the tests in a sheet and checks them, tables that stand below one another one by one. What cannot
 * be read is said; nothing is thrown.
 *
 * @param lines Of a stream, the line of each row; it has no cells to name.
 */
export function checkSheet(
  file: string,
  sheet: string | undefined,
  rows: readonly (readonly CellValue[])[],
  options: CheckOptions & ReadingOptions,
  withTests: boolean,
  lines?: readonly number[],
): CheckedSheet {
  const notChecked = (issue: Issue): CheckedSheet => {
    const amiss = !NO_TESTS.has(issue.id);
    const message = amiss ? issueSentence(issue) : say("sheet-without-tests");
    return { hasTests: false, said: [{ kind: "not read", file, sheet, message, amiss }] };
  };
  const block = rectangle(rows);
  const kept = options.setup?.columns;
  const found = findTestsIn(block, kept);
  if (isIssue(found)) return notChecked(found);
  const [first, ...below] = "forms" in found ? [] : stackedTables(found.layout, kept);
  const parts: readonly TestsInBlock[] =
    first === undefined
      ? [found]
      : [{ ...found, layout: first }, ...below.map((layout) => tableIn(block, layout))];
  const said: Said[] = [];
  let hasTests = false;
  for (const part of parts) {
    const result = checkTests(part, options);
    if (isIssue(result)) {
      said.push(...notChecked(result).said);
      continue;
    }
    hasTests = true;
    const place = placeOfCheck(placeInSheet(file, sheet, 0, result), lines);
    const [top, columns] =
      "forms" in part
        ? [0, block[0]!.length]
        : [part.layout.headerRow, part.layout.table.headers.length];
    const bottom = "forms" in part ? block.length - 1 : undefined;
    const ofSheet = saidOfSheet(result, place, top, columns, bottom);
    for (const each of saidOfRows(result, place, withTests)) said.push(each);
    said.push(lines ? { ...ofSheet, area: undefined } : ofSheet);
  }
  return { hasTests, said };
}

/** A place in a sheet, or in a stream by its line alone. */
function placeOfCheck(inSheet: CheckedPlace, lines?: readonly number[]): CheckedPlace {
  if (!lines) return inSheet;
  const inStream = ({ row }: { readonly row: number }) => ({ row: lines[row - 1]! });
  return {
    file: inSheet.file,
    at: (row, field) => inStream(inSheet.at(row, field)),
    of: (place) => inStream(inSheet.of(place)),
  };
}

/** Rows of one length, as a table has them; a file leaves blank cells at the end out. */
function rectangle(rows: readonly (readonly CellValue[])[]): readonly (readonly CellValue[])[] {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return rows.map((row) =>
    row.length === width ? row : [...row, ...Array<null>(width - row.length).fill(null)],
  );
}
