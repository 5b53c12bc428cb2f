import type { FUniver } from "@univerjs/core/facade";
import { areaAddress } from "../cell-address";
import type { LinesFor, ReadArea } from "../sheet-host";
import { cellHolding } from "./cell-content";
import { valuesOf } from "./reading";
import { newSheetHolding } from "./results-sheet";
import { SheetCells } from "./sheet-cells";
import { openWorkbook, type Sheet } from "./workbook";

/** Reads all that stands on the sheet of a name; `undefined` where the workbook has none. */
export function readNamedSheet(api: FUniver, name: string): ReadArea | undefined {
  const sheet = sheetNamed(api, name);
  if (!sheet) return undefined;
  const cells = new SheetCells(sheet);
  const { bottom, right } = cells.used();
  const area = {
    ...{ sheetId: sheet.getSheetId(), sheetName: sheet.getSheetName() },
    ...{ row: 0, column: 0, rows: bottom + 1, columns: right + 1 },
  };
  return { area, address: areaAddress(area), values: valuesOf(sheet, area, cells) };
}

/** Adds lines below all that stands on a sheet, which is made where there is none. */
export function addLinesBelow(api: FUniver, name: string, lines: LinesFor): ReadArea {
  const there = readNamedSheet(api, name);
  const added = lines(there);
  if (!there) {
    const front = openWorkbook(api).getActiveSheet();
    newSheetHolding(api, name, added);
    openWorkbook(api).setActiveSheet(front);
  }
  if (there && added.length > 0) putBelow(sheetNamed(api, name)!, there.area.rows, added);
  return readNamedSheet(api, name)!;
}

function putBelow(sheet: Sheet, row: number, lines: ReturnType<LinesFor>): void {
  const columns = lines.reduce((most, line) => Math.max(most, line.length), 1);
  const missing = row + lines.length - sheet.getMaxRows();
  if (missing > 0) sheet.insertRowsAfter(sheet.getMaxRows() - 1, missing);
  const wider = columns - sheet.getMaxColumns();
  if (wider > 0) sheet.insertColumnsAfter(sheet.getMaxColumns() - 1, wider);
  sheet
    .getRange(row, 0, lines.length, columns)
    .setValues(
      lines.map((line) => Array.from({ length: columns }, (_, i) => cellHolding(line[i] ?? null))),
    );
}

/** Sheets are called by their names without regard to capitals, as in Excel. */
function sheetNamed(api: FUniver, name: string): Sheet | undefined {
  return openWorkbook(api)
    .getSheets()
    .find((sheet) => sheet.getSheetName().toLowerCase() === name.toLowerCase());
}
