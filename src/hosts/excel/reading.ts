import { areaAddress } from "../cell-address";
import type { CellArea, ReadArea, ReadScope } from "../sheet-host";
import { inExcel } from "./in-excel";
import { locate } from "./locate";
import { readValues } from "./read-values";

/** Reads the selection or the table around it. */
export function readScope(scope: ReadScope, progress?: (done: number) => void): Promise<ReadArea> {
  return inExcel(async (context) => {
    const area = await locate(context, scope);
    return readOf(area, await readValues(context, area, progress));
  });
}

/** Reads an area again. */
export function readAgain(area: CellArea): Promise<ReadArea> {
  return inExcel(async (context) => readOf(area, await readValues(context, area)));
}

function readOf(area: CellArea, values: ReadArea["values"]): ReadArea {
  return { area, address: areaAddress(area), values };
}
