import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { isIssue, type Issue } from "../measure/issue";
import { withAmountsToldAbove } from "./amounts-told";
import { findForms, type FoundForms } from "./find-forms";
import { findTable, topOfHeaders, type SheetLayout } from "./layout";
import { withLimitsInHeader } from "./limits-in-header";
import { readFormsInSteps } from "./read-forms";
import { readTableInSteps, type ReadingOptions } from "./read-table";
import { withFaultsToldAbove } from "./rows-of-words";
import { rowsRightAbove, saidBesideTests } from "./rows-beside-tests";
import { saidOnce, type RowsBesideTests } from "./said-once";
import { withSaidOnce } from "./with-said-once";
import { MOST_ROWS_OF_FORMS, severalInRows } from "./several-in-rows";
import type { KeptColumn } from "./recognition";
import type { SheetReading } from "./sheet-reading";
import { headsOtherTests, isTable } from "./table-or-form";
import {
  titleOfAnotherMethod,
  withTitle,
  type TitleOfAnotherMethod,
} from "./title-of-another-method";

/** So many rows below a header tell whether it is one. */
const ROWS_LOOKED_AT = 200;

/** What holds the tests of a block: a table, or forms. */
export type TestsInBlock =
  | {
      readonly layout: SheetLayout;
      readonly head?: RowsBesideTests | undefined;
      readonly title?: Title;
    }
  | {
      readonly forms: FoundForms;
      /** Above a table that holds several tests in a row, or a row for each value. */
      readonly head?: RowsBesideTests | undefined;
      readonly title?: Title;
    };

type Title = TitleOfAnotherMethod | undefined;

/**
 * Finds the tests in a block of cells: a table with one test a row, else forms with labels beside or
 * above their values.
 *
 * @param kept What the user has said of columns.
 * @returns The issue `no-header-row` where there are none, `rows-are-no-tests` where they are too many to be read.
 */
export function findTestsIn(
  block: readonly (readonly CellValue[])[],
  kept?: readonly KeptColumn[],
): TestsInBlock | Issue {
  const found = testsIn(block, kept);
  if (isIssue(found)) return found;
  const top = topOf(found);
  const title = titleOfAnotherMethod(block, top);
  const head = { rows: block.slice(0, top), from: 0 };
  return "forms" in found && !found.forms.inTable ? { ...found, title } : { ...found, title, head };
}

/** One of the tables below one another in a block, each under its own title. */
export function tableIn(
  block: readonly (readonly CellValue[])[],
  layout: SheetLayout,
): TestsInBlock {
  const top = topOfHeaders(layout);
  return {
    layout,
    title: titleOfAnotherMethod(block, top, true),
    head: rowsRightAbove(block, top),
  };
}

/** The first row of what holds the tests, be it of the titles of groups above their headers. */
function topOf(found: TestsInBlock): number {
  if ("forms" in found) return Math.min(...found.forms.labels.map(({ row }) => row));
  return topOfHeaders(found.layout);
}

function testsIn(
  block: readonly (readonly CellValue[])[],
  kept?: readonly KeptColumn[],
): TestsInBlock | Issue {
  const several = severalInRows(block);
  if (several) return isIssue(several) ? several : { forms: several };
  const layout = findTable(block, kept);
  if (!isIssue(layout) && isTable(layout, kept)) return { layout };
  const first = firstOfSeveral(block, kept);
  if (first) return { layout: first };
  if (!isIssue(layout) && headsOtherTests(layout, kept)) return { layout };
  const forms = block.length > MOST_ROWS_OF_FORMS ? undefined : findForms(block);
  if (forms && (isIssue(layout) || !areRowsApart(block))) return { forms };
  return isIssue(layout) ? layout : { layout };
}

/**
 * Of tables that stand beside each other, parted by blank columns, the first. Together their headers say
 * everything twice. The others are in its rows still, so that they are said not to be read.
 */
function firstOfSeveral(
  block: readonly (readonly CellValue[])[],
  kept?: readonly KeptColumn[],
): SheetLayout | undefined {
  const parts = filledStretches(block);
  if (parts.length < 2) return undefined;
  for (const { from, to } of parts) {
    const alone = block
      .slice(0, ROWS_LOOKED_AT)
      .map((row) => row.map((cell, at) => (at >= from && at <= to ? cell : null)));
    const layout = findTable(alone, kept);
    if (isIssue(layout) || !isTable(layout, kept)) continue;
    const { headerRow, table } = layout;
    const headers = block[headerRow]!;
    return {
      headerRow,
      headers: layout.headers.map((each, at) =>
        table.headers[at] ? each : [shownValue(headers[at])],
      ),
      table: {
        ...table,
        headers: table.headers.map((own, at) => own || headers[at]!),
        rows: block.slice(headerRow + 1),
      },
    };
  }
  return undefined;
}

/** Whether rows look like forms only because of the blank ones between them: they are those of a table. */
function areRowsApart(block: readonly (readonly CellValue[])[]): boolean {
  const filled = block.filter((row) => !row.every(isBlank));
  return filled.length < block.length && findForms(filled) === undefined;
}

/** The stretches of columns that hold something near the top of a block. */
function filledStretches(
  block: readonly (readonly CellValue[])[],
): readonly { from: number; to: number }[] {
  const top = block.slice(0, ROWS_LOOKED_AT);
  const stretches: { from: number; to: number }[] = [];
  for (let at = 0; at < (block[0]?.length ?? 0); at++) {
    if (top.every((row) => isBlank(row[at]))) continue;
    const last = stretches.at(-1);
    if (last?.to === at - 1) last.to = at;
    else stretches.push({ from: at, to: at });
  }
  return stretches;
}

/**
 * Reads the tests in a block of cells, in steps, each of which yields the share that is done. Places are
 * counted from the top left corner of the block.
 */
export function* readTestsInSteps(
  found: TestsInBlock,
  options: ReadingOptions = {},
): Generator<number, SheetReading> {
  const { title, head } = found;
  if ("forms" in found) {
    const read = yield* readFormsInSteps(found.forms, options);
    return withTitle(head ? withSaidOnce(read, saidOnce(head, options)) : read, title);
  }
  const { table, headerRow } = found.layout;
  const inTable = yield* readTableInSteps(table, { ...options, headerRow });
  const read = withLimitsInHeader(inTable, headerRow);
  const whole = withSaidOnce(read, saidBesideTests(read, found.layout, head, options));
  return withTitle(head ? withWordsAbove(whole, head) : whole, title);
}

/** What lines above a table tell of its tests. */
function withWordsAbove(read: SheetReading, { rows, from }: RowsBesideTests): SheetReading {
  return withFaultsToldAbove(withAmountsToldAbove(read, rows, from), rows, from);
}
