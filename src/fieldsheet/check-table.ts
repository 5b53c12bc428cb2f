import { isBlank, type CellValue } from "../measure/cell-value";
import { isIssue, issue, type Issue } from "../measure/issue";
import { withLimitsInHeader } from "../reading/limits-in-header";
import { readTableInSteps, type ReadingOptions } from "../reading/read-table";
import { findTestsIn, readTestsInSteps, type TestsInBlock } from "../reading/read-sheet";
import type { SheetReading } from "../reading/sheet-reading";
import { inOneGo, shareOf, type Steps } from "../reading/steps";
import type { SheetTable } from "../reading/sheet-table";
import type { CheckOptions } from "./check-options";
import { checkInSteps } from "./check-reading";
import type { CheckResult } from "./check-result";

/** About the share of the time that the reading takes. */
const READING_TAKES = 0.3;

/**
 * Reads a table of tests and checks it.
 *
 * @param table Headers and rows as they stand in the sheet.
 * @param options Specification limits, if they do not stand in the sheet, and the decimal mark.
 * @returns What was found; the issue `headers-and-rows-differ`, `no-header-row`, `no-readings-column`
 *   or `limits-do-not-fit` where there is nothing to check.
 */
export function checkTable(
  table: SheetTable,
  options?: CheckOptions & ReadingOptions,
): CheckResult | Issue {
  return inOneGo(checkTableInSteps(table, options));
}

/** The same in steps; each yields the share that is done. */
export function* checkTableInSteps(
  table: SheetTable,
  options: CheckOptions & ReadingOptions = {},
): Steps<CheckResult | Issue> {
  const { headers, rows } = table;
  const odd = rows.find((row) => row.length !== headers.length);
  if (odd) {
    return issue("headers-and-rows-differ", { headers: headers.length, columns: odd.length });
  }
  if (headers.every(isBlank)) return issue("no-header-row");
  const reading = readTableInSteps(table, asSetUp(options));
  const sheet = withLimitsInHeader(yield* shareOf([0, READING_TAKES], reading), 0);
  return (
    withoutReadings(sheet) ?? (yield* shareOf([READING_TAKES, 1], checkInSteps(sheet, options)))
  );
}

/**
 * Checks the tests that were found in a block of cells, a table or forms, in steps.
 *
 * @returns Also the issue `no-readings-column` or `limits-do-not-fit`.
 */
export function* checkTestsInSteps(
  found: TestsInBlock,
  options: CheckOptions & ReadingOptions = {},
): Steps<CheckResult | Issue> {
  const sheet = yield* shareOf([0, READING_TAKES], readTestsInSteps(found, asSetUp(options)));
  return (
    withoutReadings(sheet) ?? (yield* shareOf([READING_TAKES, 1], checkInSteps(sheet, options)))
  );
}

/**
 * Finds the tests in a block of cells and checks them. Places are counted from its top left corner.
 *
 * @returns Also the issue `no-header-row`, `no-tests-below`, `no-readings-column` or `limits-do-not-fit`.
 */
export function checkBlock(
  block: readonly (readonly CellValue[])[],
  options?: CheckOptions & ReadingOptions,
): CheckResult | Issue {
  const found = findTestsIn(block, options?.kept ?? options?.setup?.columns);
  if (isIssue(found)) return found;
  if ("layout" in found && found.layout.table.rows.length === 0) return issue("no-tests-below");
  return checkTests(found, options);
}

/** Checks the tests that were found in a block in one go. */
export function checkTests(
  found: TestsInBlock,
  options?: CheckOptions & ReadingOptions,
): CheckResult | Issue {
  return inOneGo(checkTestsInSteps(found, options));
}

/** What the setup says of columns and dates goes into the reading. */
function asSetUp(options: CheckOptions & ReadingOptions): ReadingOptions {
  const { kept, datesFrom, setup } = options;
  return {
    ...options,
    kept: kept ?? setup?.columns,
    datesFrom: datesFrom ?? setup?.datesFrom,
  };
}

/** A sheet with neither meter readings nor the air that came of them has no tests of this method to check. */
function withoutReadings(sheet: SheetReading): Issue | undefined {
  const isOfTests = (["sample", "load", "date", "time"] as const).some(sheet.has);
  const has =
    (["first", "second", "final"] as const).some(sheet.has) || (sheet.has("air") && isOfTests);
  return has ? undefined : issue("no-readings-column");
}
