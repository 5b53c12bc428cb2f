import { columnLetters } from "../../../hosts/cell-address";
import type { ReadArea } from "../../../hosts/sheet-host";
import { isBlank, shownValue, type CellValue } from "../../../measure/cell-value";
import { isIssue } from "../../../measure/issue";
import { findTable, type SheetLayout } from "../../../reading/layout";
import { keptFor } from "../../../reading/kept-columns";
import { recognise } from "../../../reading/recognise";
import type { KeptColumn, RecognisedColumn } from "../../../reading/recognition";
import type { Setup } from "../../../reading/setup/setup";
import { sheetColumnsOf, type CheckedArea } from "../checked-area";
import { settingNames } from "./choices";

/** A table in which no tests were found, so that the user can say what its columns hold. */
export interface UnreadTable {
  readonly read: ReadArea;
  readonly layout: SheetLayout;
}

/** A column, or the label of a form, with what it is taken for. */
export interface ColumnLine {
  /** "C" for a column, "C7" for a label. */
  readonly place: string;
  readonly header: string;
  /** The header by which a setting names it; `undefined` where none names it alone. */
  readonly name: string | undefined;
  readonly taken: RecognisedColumn;
  /** What a setting says of it. */
  readonly kept: KeptColumn | undefined;
}

/** So many cells tell what a column holds. */
const CELLS_LOOKED_AT = 200;

/** The table in which no tests were found: by its known headers, else the first line of several texts heads it. */
export function unreadTable(read: ReadArea, kept: readonly KeptColumn[]): UnreadTable | undefined {
  const known = findTable(read.values, kept);
  if (!isIssue(known)) return { read, layout: known };
  const isText = (cell: CellValue) => typeof cell === "string" && !isBlank(cell);
  const headerRow = read.values.findIndex((row) => row.filter(isText).length > 1);
  if (headerRow < 0) return undefined;
  const headers = read.values[headerRow]!;
  const table = { headers, rows: read.values.slice(headerRow + 1) };
  return { read, layout: { table, headerRow, headers: headers.map((h) => [shownValue(h)]) } };
}

/** The columns of a checked table or form with a header, in the order of the sheet. */
export function columnLines(checked: CheckedArea, setup: Setup): readonly ColumnLine[] {
  const { recognised, labels } = checked.result.reading;
  const { row: top, column: left } = checked.read.area;
  const placeOf = (index: number) => {
    const label = labels?.[index];
    const letters = columnLetters(left + (label?.column ?? index));
    return label ? `${letters}${top + label.row + 1}` : letters;
  };
  return linesOf(checked, recognised, setup, placeOf);
}

/** The same of a table in which no tests were found. */
export function unreadLines({ read, layout }: UnreadTable, setup: Setup): readonly ColumnLine[] {
  const some = layout.table.rows.slice(0, CELLS_LOOKED_AT);
  const columns = sheetColumnsOf(layout).map(({ headers }, index) => ({
    headers,
    cells: some.map((row) => row[index] ?? null),
  }));
  const { all } = recognise(columns, setup.columns);
  return linesOf(layout, all, setup, (index) => columnLetters(read.area.column + index));
}

function linesOf(
  layout: SheetLayout,
  recognised: readonly RecognisedColumn[],
  setup: Setup,
  placeOf: (index: number) => string,
): readonly ColumnLine[] {
  const columns = sheetColumnsOf(layout);
  const names = settingNames(columns, setup);
  const kept = keptFor(columns, setup.columns);
  return recognised.flatMap((taken) =>
    taken.header.trim() === ""
      ? []
      : {
          place: placeOf(taken.index),
          header: taken.header,
          name: names[taken.index],
          taken,
          kept: kept[taken.index],
        },
  );
}
