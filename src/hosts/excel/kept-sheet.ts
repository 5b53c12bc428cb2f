import { cellValueFrom, type CellValue } from "../../measure/cell-value";
import { Problem } from "../../measure/problem";
import { holdsWhatWasRead } from "../held-cells";
import type { CellBlock, ReadArea } from "../sheet-host";
import { inExcel } from "./in-excel";
import { writable } from "./writable";

/**
 * Writes blocks of cells into a sheet. What stands there is read in the request that writes; where it is
 * not what was read before, it is put back.
 *
 * @throws Problem `changed-meanwhile`.
 */
export function writeCellsOf(read: ReadArea, blocks: readonly CellBlock[]): Promise<void> {
  return inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(read.area.sheetId);
    const written = blocks.map((block) => {
      const { row, column, values } = block;
      const at = () => sheet.getRangeByIndexes(row, column, values.length, values[0]!.length);
      const before = at();
      before.load("values,formulas");
      at().values = values.map((line) => line.map(cellToWrite));
      return { block, before, at };
    });
    await context.sync();
    const changed = written.some(({ block, before }) => {
      const now = (before.values as unknown[][]).map((line) => line.map(cellValueFrom));
      return !holdsWhatWasRead(now, read, block);
    });
    if (!changed) return;
    for (const { before, at } of written) {
      const values = before.values as unknown[][];
      at().formulas = (before.formulas as unknown[][]).map((line, r) =>
        line.map((formula, c) => asItWas(formula, values[r]![c])),
      );
    }
    await context.sync();
    throw new Problem("changed-meanwhile");
  });
}

/** `null` leaves a cell as it is. */
function cellToWrite(value: CellValue): string | number | boolean | null {
  return value === null ? null : writable([value], 1)[0]!;
}

/** A text that is no formula stays a text, whatever it looks like. */
function asItWas(formula: unknown, value: unknown): unknown {
  const isText = typeof value === "string" && formula === value && value !== "";
  return isText ? `'${value}` : formula;
}
