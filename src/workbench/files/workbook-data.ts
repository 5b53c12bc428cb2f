import {
  BooleanNumber,
  CellValueType,
  LocaleType,
  type ICellData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { blockOf } from "../../files/workbook/cell-reference";
import type { FileCell, FileSheet, FileWorkbook } from "../../files/workbook/read-workbook";
import { serialOf } from "../../files/workbook/stored-values";
import { cellStyle } from "./cell-style";
import { conditionalFormats } from "./conditional-formats";
import { writtenFormula } from "./formula-text";
import { notes } from "./notes";
import { heightOfRow } from "./row-height";
import type { SheetSize } from "./shown-ranges";
import { validations } from "./validations";

/** Room to type in, around what a file holds. */
const SPARE_ROWS = 100;
const SPARE_COLUMNS = 6;
const LEAST_COLUMNS = 20;
/** A width in files counts characters; a character of the usual font takes so many pixels. */
const CHARACTER_WIDTH = 7;
const CELL_PADDING = 5;
const HIDDEN = { hd: BooleanNumber.TRUE };
/** Where a name is known, as the spreadsheet says it. */
const WHOLE_WORKBOOK = "AllDefaultWorkbook";

/**
 * What a file holds, as the spreadsheet takes it.
 *
 * @param id An id for the workbook that no other one has had; its sheets get theirs from it.
 */
export function workbookData(id: string, name: string, file: FileWorkbook): Partial<IWorkbookData> {
  const shown = file.sheets.filter(({ hidden, veryHidden }) => !hidden && !veryHidden);
  const sheets = shown.map((sheet, i) => sheetData(`${id}-${i + 1}`, sheet, file.themeColors));
  const bySheet = (of: (sheet: FileSheet, size: SheetSize) => object) =>
    Object.fromEntries(shown.map((sheet, i) => [sheets[i]!.id!, of(sheet, sizeOf(sheet))]));
  const resources = {
    SHEET_DEFINED_NAME_PLUGIN: { ...namesIn(file), ...namesOfTables(shown) },
    SHEET_CONDITIONAL_FORMATTING_PLUGIN: bySheet((sheet, size) =>
      conditionalFormats(sheet, size, file.themeColors),
    ),
    SHEET_DATA_VALIDATION_PLUGIN: bySheet(validations),
    SHEET_NOTE_PLUGIN: bySheet(notes),
  };
  return {
    id,
    name,
    locale: LocaleType.EN_US,
    sheetOrder: sheets.map(({ id }) => id!),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id!, sheet])),
    resources: Object.entries(resources).map(([name, kept]) => ({
      name,
      data: JSON.stringify(kept),
    })),
  };
}

/** The names of a workbook; those that only a program uses, such as of a print area, are left out. */
function namesIn({ namedRanges = [] }: FileWorkbook): Record<string, object> {
  const names = namedRanges.filter(({ name, scope }) => !name.startsWith("_xlnm") && !scope);
  return Object.fromEntries(
    names.map(({ name, range }) => [
      name,
      { id: name, name, formulaOrRefString: range, localSheetId: WHOLE_WORKBOOK },
    ]),
  );
}

/** Tables as names for their cells: the spreadsheet has names and no tables. */
function namesOfTables(sheets: readonly FileSheet[]): Record<string, object> {
  const names = sheets.flatMap(({ name: sheetName, tables = [] }) =>
    tables.flatMap(({ name, range = "" }) => {
      const cells = range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
      const formulaOrRefString = `'${sheetName.replaceAll("'", "''")}'!${cells}`;
      return cells ? [{ id: name, name, formulaOrRefString, localSheetId: WHOLE_WORKBOOK }] : [];
    }),
  );
  return Object.fromEntries(names.map((each) => [each.id, each]));
}

function sheetData(id: string, sheet: FileSheet, theme?: string[]): Partial<IWorksheetData> {
  const cells: Record<number, Record<number, ICellData>> = {};
  const spilled = cellsOfSpills(sheet);
  sheet.rows.forEach((row, r) =>
    row.forEach((value, c) => {
      const key = `${r},${c}`;
      const cell = sheet.cells?.get(key);
      const data = cellData(spilled.has(key) ? null : value, cell, theme);
      if (data) (cells[r] ??= {})[c] = data;
    }),
  );
  const { rows, columns } = sizeOf(sheet);
  const { rows: frozenRows = 0, columns: frozenColumns = 0 } = sheet.freezePane ?? {};
  return {
    id,
    name: sheet.name,
    rowCount: rows,
    columnCount: columns,
    cellData: cells,
    columnData: Object.fromEntries(
      (sheet.columns ?? []).slice(0, columns).flatMap(({ width, hidden }, i) => {
        const w = width && Math.round(width * CHARACTER_WIDTH + CELL_PADDING);
        return w || hidden ? [[i, { ...(w && { w }), ...(hidden && HIDDEN) }]] : [];
      }),
    ),
    rowData: Object.fromEntries(
      sheet.rows.flatMap((_, row) => {
        const h = heightOfRow(sheet, row);
        const hidden = sheet.rowDefs?.get(row)?.hidden;
        return h || hidden ? [[row, { ...(h && { h }), ...(hidden && HIDDEN) }]] : [];
      }),
    ),
    mergeData: (sheet.merges ?? [])
      .filter(({ startRow, startCol }) => startRow < rows && startCol < columns)
      .map(({ startRow, endRow, startCol, endCol }) => ({
        startRow,
        endRow: Math.min(endRow, rows - 1),
        startColumn: startCol,
        endColumn: Math.min(endCol, columns - 1),
      })),
    freeze: {
      xSplit: frozenColumns,
      ySplit: frozenRows,
      startRow: frozenRows || -1,
      startColumn: frozenColumns || -1,
    },
    showGridlines: BooleanNumber.TRUE,
  };
}

/** Rows and columns that the spreadsheet gets: those of the file and room to type in. */
function sizeOf(sheet: FileSheet): SheetSize {
  const columns = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0);
  return {
    rows: sheet.rows.length + SPARE_ROWS,
    columns: Math.max(columns + SPARE_COLUMNS, LEAST_COLUMNS),
  };
}

function cellData(
  value: FileCell["value"],
  cell: FileCell | undefined,
  theme?: string[],
): ICellData | undefined {
  const style = cell?.style && cellStyle(cell.style, theme);
  const dressed = style && Object.keys(style).length > 0 ? { s: style } : {};
  // A formula on a table's columns is left as its last value: this spreadsheet has no tables.
  if (cell?.formula && !cell.formula.includes("["))
    return {
      ...dressed,
      f: writtenFormula(cell.formula),
      ...(cell.formulaSharedIndex !== undefined && { si: `shared-${cell.formulaSharedIndex}` }),
    };
  if (cell?.formulaSharedIndex !== undefined && cell.formula === undefined)
    return { ...dressed, si: `shared-${cell.formulaSharedIndex}` };
  const content = contentOf(value);
  return content || "s" in dressed ? { ...dressed, ...content } : undefined;
}

function contentOf(value: FileCell["value"]): ICellData | undefined {
  if (value === null || value === "") return undefined;
  if (value instanceof Date) return { v: serialOf(value), t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
}

/** Cells that only show a part of another cell's result: the formula fills them again by itself. */
function cellsOfSpills(sheet: FileSheet): Set<string> {
  const spilled = new Set<string>();
  for (const [key, { formulaType, formulaRef }] of sheet.cells ?? []) {
    const block = formulaType === "array" && formulaRef ? blockOf(formulaRef) : undefined;
    if (!block) continue;
    // A formula may claim more cells than the sheet holds.
    const bottom = Math.min(block.bottom, sheet.rows.length - 1);
    for (let row = block.top; row <= bottom; row++) {
      const right = Math.min(block.right, sheet.rows[row]!.length - 1);
      for (let column = block.left; column <= right; column++) spilled.add(`${row},${column}`);
    }
    spilled.delete(key);
  }
  return spilled;
}
