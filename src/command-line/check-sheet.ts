import { checkTests } from "../fieldsheet/check-table";
import type { CheckOptions } from "../fieldsheet/check-options";
import type { ReadingOptions } from "../reading/read-table";
import type { CellValue } from "../measure/cell-value";
import { isIssue, issueSentence, type Issue } from "../measure/issue";
import { say } from "../messages/pane-catalogue";
import { findTestsIn } from "../reading/read-sheet";
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
 * Finds the tests in a sheet and checks them; where a further header stands below, also the tests under
 * it, as of a table of its own. What cannot be read is said; nothing is thrown.
 *
 * @param from The row from which on the sheet is looked at.
 * @param lines Of a stream, the line of each row; it has no cells to name.
 */
export function checkSheet(
  file: string,
  sheet: string | undefined,
  rows: readonly (readonly CellValue[])[],
  options: CheckOptions & ReadingOptions,
  withTests: boolean,
  lines?: readonly number[],
  from = 0,
): CheckedSheet {
  const notChecked = (issue: Issue): CheckedSheet => {
    const amiss = !NO_TESTS.has(issue.id);
    const message = amiss ? issueSentence(issue) : say("sheet-without-tests");
    return { hasTests: false, said: [{ kind: "not read", file, sheet, message, amiss }] };
  };
  const block = rectangle(rows).slice(from);
  const found = findTestsIn(block, options.setup?.columns);
  if (isIssue(found)) return notChecked(found);
  const checked = checkTests(found, options);
  if (isIssue(checked)) return notChecked(checked);
  const { headedAgain, placeOf } = checked.reading;
  const again = headedAgain && placeOf(headedAgain.record, null).row;
  const below =
    again === undefined
      ? undefined
      : checkSheet(file, sheet, rows, options, withTests, lines, from + again);
  // Where the tests of the next table are checked too, nothing is left unread.
  const findings = checked.findings.filter(
    ({ rule }) => rule !== "rows-not-read" || !below?.hasTests,
  );
  const result = { ...checked, findings };
  const inSheet = placeInSheet(file, sheet, from, result);
  const inStream = ({ row }: { readonly row: number }) => ({ row: lines![row - 1]! });
  const place: CheckedPlace = lines
    ? {
        file,
        at: (row, field) => inStream(inSheet.at(row, field)),
        of: (at) => inStream(inSheet.of!(at)),
      }
    : inSheet;
  const [top, columns] =
    "forms" in found
      ? [from, block[0]!.length]
      : [from + found.layout.headerRow, found.layout.table.headers.length];
  const bottom = "forms" in found ? from + block.length - 1 : again && from + again - 1;
  const ofSheet = saidOfSheet(result, place, top, columns, bottom);
  const said = [
    ...saidOfRows(result, place, withTests),
    lines ? { ...ofSheet, area: undefined } : ofSheet,
    ...(below?.hasTests ? below.said : []),
  ];
  return { hasTests: true, said };
}

/** Rows of one length, as a table has them; a file leaves blank cells at the end out. */
function rectangle(rows: readonly (readonly CellValue[])[]): readonly (readonly CellValue[])[] {
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return rows.map((row) =>
    row.length === width ? row : [...row, ...Array<null>(width - row.length).fill(null)],
  );
}
