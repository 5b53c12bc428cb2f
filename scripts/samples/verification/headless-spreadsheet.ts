import { LocaleService, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import "@univerjs/engine-formula/facade";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import "@univerjs/sheets/facade";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import "@univerjs/sheets-formula/facade";
import type { SampleCell, SampleSheet, Value } from "../sheet";
import { closeSpreadsheet } from "./close-spreadsheet";

/** A function that the spreadsheet does not bring along, by its name in a formula. */
export type AddedFunction = NonNullable<
  NonNullable<ConstructorParameters<typeof UniverFormulaEnginePlugin>[0]>["function"]
>[number];

/**
 * Calculates sheets in the workbench's spreadsheet, without a screen.
 *
 * @param added The functions of the add-in. Without them a cell that calls one holds its known result.
 * @returns The sheets with the results of every formula that was calculated, in each cell over which they spread.
 */
export async function calculated(
  sheets: readonly SampleSheet[],
  added: readonly AddedFunction[] = [],
): Promise<SampleSheet[]> {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [...added] });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  const api = FUniver.newAPI(univer);
  const isCalculated = ({ f }: SampleCell) =>
    f !== undefined && (added.length > 0 || !f.includes("FRESH."));
  const workbook = api.createWorkbook({
    id: "book",
    sheetOrder: sheets.map(({ name }) => name),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.name, sheetData(sheet, isCalculated)])),
  });
  const formulas = api.getFormula();
  formulas.executeCalculation();
  await formulas.onCalculationEnd();
  const results = sheets.map((sheet) => {
    const found = workbook.getSheetByName(sheet.name)!;
    const spilled = spilledInto(sheet, isCalculated);
    return {
      ...sheet,
      rows: sheet.rows.map((row, r) =>
        row.map((cell, c) =>
          (cell && isCalculated(cell)) || spilled.has(`${r},${c}`)
            ? { ...cell, v: found.getRange(r, c).getValue() as Value }
            : cell,
        ),
      ),
    };
  });
  closeSpreadsheet(univer, LocaleService);
  return results;
}

function sheetData(sheet: SampleSheet, isCalculated: (cell: SampleCell) => boolean) {
  const spilled = spilledInto(sheet, isCalculated);
  const cellData = Object.fromEntries(
    sheet.rows.map((row, r) => [
      r,
      Object.fromEntries(
        row.flatMap((cell, c) =>
          cell && !spilled.has(`${r},${c}`)
            ? [[c, isCalculated(cell) ? { f: cell.f } : { v: cell.v }]]
            : [],
        ),
      ),
    ]),
  );
  const { name, rows } = sheet;
  return { id: name, name, rowCount: rows.length, columnCount: 26, cellData };
}

/** Cells that have to be empty, so that the result of a formula can spread over them. */
function spilledInto({ rows }: SampleSheet, isCalculated: (cell: SampleCell) => boolean) {
  const places = new Set<string>();
  rows.forEach((row, r) =>
    row.forEach((cell, c) => {
      if (!cell?.spill || !isCalculated(cell)) return;
      const [height, width] = cell.spill;
      for (let down = 0; down < height; down += 1)
        for (let across = 0; across < width; across += 1)
          if (down + across > 0) places.add(`${r + down},${c + across}`);
    }),
  );
  return places;
}
