import type { CellPlace, ReadArea, SheetHost } from "../../hosts/sheet-host";
import { isIssue, issue, type Issue } from "../../measure/issue";
import { Problem } from "../../measure/problem";
import { isLackOfTests } from "./lack-of-tests";
import { recognise } from "../../reading/recognise";
import type { KeptColumn } from "../../reading/recognition";
import { isSetupSheet } from "../../reading/setup/setup-sheet-name";
import { sheetColumnsOf } from "./checked-area";
import { withColumnsApart } from "./columns-apart";
import { withRowsAbove } from "./rows-above";
import { withRowsBelow } from "./rows-below";
import { READING_FIELDS } from "../../reading/fields";
import type { SheetLayout } from "../../reading/layout";
import { findTestsIn } from "../../reading/read-sheet";
import { MOST_ROWS_OF_FORMS } from "../../reading/several-in-rows";
import { headingPlaces } from "../../review/read-review";
import type { BlockPlace } from "../../reading/block-place";
import { isReportSheet } from "./own-sheets";

/** Rows of a sheet that are looked through for headers. */
const TOP_ROWS = 120;

/** A sheet that holds tests, and a cell in their header. */
export interface SheetWithTests {
  readonly sheetName: string;
  readonly place: CellPlace;
  /** Whether they stand in forms, which blank rows and columns do not end. */
  readonly forms: boolean;
}

/** A sheet down to where forms are no longer looked for, blank rows and all. */
function wholeSheet(top: ReadArea): ReadArea {
  return { ...top, area: { ...top.area, rows: MOST_ROWS_OF_FORMS + 1 } };
}

/** The tests that were found, or the other sheets that hold some. */
export type FoundTests =
  { readonly read: ReadArea } | { readonly elsewhere: readonly SheetWithTests[] };

/**
 * Finds the tests that are meant: those around the selected cell, else the first ones on the sheet in
 * front, else the other sheets that hold some, else results without readings around the selected cell.
 *
 * @throws Problem what the table around the selected cell lacks, where no sheet holds tests; and those
 *   of the host.
 * @param kept What the user has said of columns.
 */
export async function findTests(
  host: SheetHost,
  progress: (rows: number) => void,
  kept: readonly KeptColumn[] = [],
): Promise<FoundTests> {
  const whole = async (read: ReadArea) => {
    const wide = await withColumnsApart(host, read, progress, kept);
    return withRowsAbove(host, await withRowsBelow(host, wide, progress, kept), kept);
  };
  let lacking: unknown;
  let piece: ReadArea | undefined;
  let around: ReadArea | undefined;
  try {
    const read = await host.read("table", progress);
    around = read;
    if (!Problem.unless(testsIn(read, kept)).forms) return { read: await whole(read) };
    // A blank row cuts a form in two.
    piece = read;
  } catch (problem) {
    if (!isLackOfTests(problem)) throw problem;
    lacking = problem;
  }
  const tops = await host.sheetTops(TOP_ROWS);
  const [front, ...others] = tops.map((top, i) =>
    // On another sheet a report of ours would be offered as tests.
    i > 0 && isReportSheet(top.area.sheetName) ? undefined : testsOn(top, kept),
  );
  if (front?.forms) return { read: await host.readAgain(wholeSheet(tops[0]!), progress) };
  if (front) {
    const read = await host.read("table", progress, front.place);
    return { read: await whole(read) };
  }
  if (piece) return { read: piece };
  const elsewhere = others.filter((sheet) => sheet !== undefined);
  if (elsewhere.length > 0) return { elsewhere };
  if (around && holdsResults(around, kept)) return { read: await whole(around) };
  throw lacking;
}

function testsOn(top: ReadArea, kept: readonly KeptColumn[]): SheetWithTests | undefined {
  if (isSetupSheet(top.area.sheetName)) return undefined;
  const found = testsIn(top, kept);
  return isIssue(found) ? undefined : { sheetName: top.area.sheetName, ...found };
}

/** A cell in the header of the tests; the issue `no-header-row` or `no-readings-column`. */
function testsIn(
  { area, values }: ReadArea,
  kept: readonly KeptColumn[],
): Pick<SheetWithTests, "place" | "forms"> | Issue {
  // A review has a column of values, which are of tests elsewhere.
  if (values.slice(0, TOP_ROWS).some(headingPlaces)) return issue("no-readings-column");
  const found = findTestsIn(values, kept);
  if (isIssue(found)) return found;
  const at = "forms" in found ? found.forms.labels[0] : headerPlace(found.layout, kept);
  if (!at) return issue("no-readings-column");
  const place = { sheetId: area.sheetId, row: area.row + at.row, column: area.column + at.column };
  return { place, forms: "forms" in found };
}

/** Whether a table reports air, though without its readings. */
function holdsResults({ values }: ReadArea, kept: readonly KeptColumn[]): boolean {
  const found = findTestsIn(values, kept);
  if (isIssue(found) || !("layout" in found)) return false;
  return recognise(sheetColumnsOf(found.layout), kept).columns.air !== undefined;
}

function headerPlace(layout: SheetLayout, kept: readonly KeptColumn[]): BlockPlace | undefined {
  const { columns } = recognise(sheetColumnsOf(layout), kept);
  const reading = READING_FIELDS.map((field) => columns[field]).find((column) => column);
  return reading && { row: layout.headerRow, column: reading.index };
}
