import type { DecimalMark } from "../../measure/number-from-cell";
import { areaAddress } from "../cell-address";
import type { CellArea, ReadArea, ReadScope } from "../sheet-host";
import { askDecimalMark } from "./decimal-mark";
import { inExcel } from "./in-excel";
import { locate } from "./locate";
import { readValues } from "./read-values";

/** What was read, and how decimals are written there: whoever reads wants both. */
export interface Reading {
  readonly read: ReadArea;
  readonly decimal: DecimalMark;
}

/** Reads the selection or the table around it. */
export function readScope(scope: ReadScope, progress?: (done: number) => void): Promise<Reading> {
  return inExcel(async (context) => {
    const decimal = askDecimalMark(context);
    const area = await locate(context, scope);
    const read = readOf(area, await readValues(context, area, progress));
    return { read, decimal: decimal() };
  });
}

/** Reads an area again. */
export function readAgain(area: CellArea): Promise<ReadArea> {
  return inExcel(async (context) => readOf(area, await readValues(context, area)));
}

function readOf(area: CellArea, values: ReadArea["values"]): ReadArea {
  return { area, address: areaAddress(area), values };
}
