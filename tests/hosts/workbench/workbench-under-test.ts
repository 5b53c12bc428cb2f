import * as core from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/preset-sheets-conditional-formatting";
import type {} from "@univerjs/preset-sheets-core";
import type {} from "@univerjs/preset-sheets-note";
import { closeSpreadsheet } from "../../../scripts/samples/verification/close-spreadsheet";
import { cellHolding } from "../../../src/hosts/workbench/cell-content";
import { SheetCells } from "../../../src/hosts/workbench/sheet-cells";
import { workbenchHost } from "../../../src/hosts/workbench/workbench-host";
import type { CellValue } from "../../../src/measure/cell-value";
import type { SpreadsheetUnderTest } from "../contract";

const ROWS = 100;
const COLUMNS = 20;

/** Opens the workbench's spreadsheet with one empty sheet. */
export function openWorkbench(): SpreadsheetUnderTest & {
  readonly api: FUniver;
  /** Another workbook, with these cells, takes the place of the open one. */
  anew(rows: readonly (readonly CellValue[])[]): void;
} {
  const { Univer, FUniver, LocaleType, LogLevel, ...parts } = core as Record<string, any>;
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  for (const plugin of [
    parts.UniverFormulaEnginePlugin,
    parts.UniverSheetsPlugin,
    parts.UniverSheetsFormulaPlugin,
    parts.UniverSheetsConditionalFormattingPlugin,
    parts.UniverSheetsNotePlugin,
  ])
    univer.registerPlugin(plugin);
  const api = FUniver.newAPI(univer) as FUniver;
  let given = 0;
  const create = (rows: readonly (readonly CellValue[])[]): void => {
    const cellData = Object.fromEntries(
      rows.map((cells, row) => [row, Object.fromEntries(cells.map(cellHolding).entries())]),
    );
    const sheet = { id: "s", name: "Loads", rowCount: ROWS, columnCount: COLUMNS, cellData };
    const id = `w${(given += 1)}`;
    const sheets = { [sheet.id]: sheet };
    api.createWorkbook({ id, name: "loads.xlsx", sheetOrder: [sheet.id], sheets });
  };
  create([]);
  // Without a screen there is nothing to scroll.
  Object.assign(Object.getPrototypeOf(api.getActiveWorkbook()!.getActiveSheet()), {
    scrollToCell: () => undefined,
  });
  const workbook = () => api.getActiveWorkbook()!;
  const front = () => workbook().getActiveSheet();
  const edit = (row: number, column: number, value: CellValue) =>
    value === null
      ? front().getRange(row, column).clearContent()
      : front().getRange(row, column).setValue(cellHolding(value));
  return {
    api,
    host: workbenchHost(api),
    anew: (rows) => {
      const before = workbook().getId();
      create(rows);
      api.disposeUnit(before);
    },
    fill: (rows) =>
      rows.forEach((cells, row) => cells.forEach((value, column) => edit(row, column, value))),
    select: (...blocks) => selectBlocks(api, blocks),
    selectColumns: (first, count) => selectBlocks(api, [[0, first, NaN, count]]),
    edit,
    insertRow: (above) => front().insertRowBefore(above),
    deleteRow: (at) => front().deleteRow(at),
    insertColumn: (before) => front().insertColumnBefore(before),
    hideRow: (row) => front().hideRows(row, 1),
    removeNote: (row, column) => front().getRange(row, column).deleteNote(),
    giveNote: (row, column, text) =>
      front()
        .getRange(row, column)
        .createOrUpdateNote({
          ...{ id: `own ${(given += 1)}`, width: 200, height: 100 },
          ...front().getRange(row, column).getNote(),
          ...{ row, col: column, note: text },
        }),
    formulaAt: (row, column) => front().getRange(row, column).getFormula() || undefined,
    noteAt: (row, column) => front().getRange(row, column).getNote()?.note,
    giveFormat: (row, column, fill) =>
      front().addConditionalFormattingRule(
        front()
          .newConditionalFormattingRule()
          .whenFormulaSatisfied("=TRUE")
          .setRanges([front().getRange(row, column).getRange()])
          .setBackground(fill)
          .build(),
      ),
    fillsAt: (row, column) =>
      front()
        .getConditionalFormattingRules()
        .filter(({ ranges }) =>
          ranges.some(
            ({ startRow, endRow, startColumn, endColumn }) =>
              startRow <= row && row <= endRow && startColumn <= column && column <= endColumn,
          ),
        )
        .map(({ rule }) => hexOf((rule as { style?: { bg?: { rgb?: string } } }).style?.bg?.rgb)),
    sheetNames: () =>
      workbook()
        .getSheets()
        .map((each) => each.getSheetName()),
    valuesOf: (name) => {
      const cells = new SheetCells(workbook().getSheetByName(name)!);
      const { bottom, right } = cells.used();
      return Array.from({ length: bottom + 1 }, (_, row) =>
        Array.from({ length: right + 1 }, (_, column) => cells.at(row, column)),
      ).map((row) =>
        row.map((value) => (typeof value === "object" && value ? value.error : value)),
      );
    },
    close: () => closeSpreadsheet(univer, parts.LocaleService),
  };
}

/** "#e59a78" from "rgb(229,154,120)", the way in which the spreadsheet keeps a colour. */
function hexOf(color = ""): string {
  const shares = color.match(/\d+/g) ?? [];
  return `#${shares.map((share) => Number(share).toString(16).padStart(2, "0")).join("")}`;
}

/** Selects as clicking and dragging do, several blocks with Ctrl held. */
function selectBlocks(api: FUniver, blocks: readonly [number, number, number, number][]): void {
  const sheet = api.getActiveWorkbook()!.getActiveSheet();
  api.syncExecuteCommand("sheet.operation.set-selections", {
    unitId: api.getActiveWorkbook()!.getId(),
    subUnitId: sheet.getSheetId(),
    selections: blocks.map(([row, column, rows, columns]) => ({
      range: {
        startRow: Number.isNaN(rows) ? NaN : row,
        endRow: row + rows - 1,
        startColumn: column,
        endColumn: column + columns - 1,
      },
      primary: {
        startRow: row,
        endRow: row,
        startColumn: column,
        endColumn: column,
        actualRow: row,
        actualColumn: column,
        isMerged: false,
        isMergedMainCell: false,
      },
      style: null,
    })),
  });
}
