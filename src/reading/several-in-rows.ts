import { issue, type Issue } from "../measure/issue";
import type { FoundForms } from "./find-forms";
import type { Cells } from "./labelled-value";
import { parametersInRows } from "./parameters-in-rows";
import { CELLS_LOOKED_AT } from "./sheet-columns";
import { testsSideBySide } from "./tests-side-by-side";

/** Forms are short; a block of more rows is a table. */
export const MOST_ROWS_OF_FORMS = 1000;

/**
 * The tests of a table whose rows are no tests: several in a row, or a row for each value.
 *
 * @returns `undefined` for any other block; the issue `rows-are-no-tests` for one that is too long to be read so.
 */
export function severalInRows(block: Cells): FoundForms | Issue | undefined {
  const isShort = block.length <= MOST_ROWS_OF_FORMS;
  const some = isShort ? block : block.slice(0, CELLS_LOOKED_AT);
  const found = testsSideBySide(some) ?? parametersInRows(some);
  if (!found) return undefined;
  return isShort ? { ...found, inTable: true } : tooLong();
}

/** Why such a table is not read where its rows come one by one, or are too many. */
export function tooLong(): Issue {
  return issue("rows-are-no-tests", { most: MOST_ROWS_OF_FORMS });
}
