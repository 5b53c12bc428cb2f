import { areaAddress } from "../cell-address";
import type { CellArea, ReadArea } from "../sheet-host";
import { inExcel } from "./in-excel";
import { askPosition, positionOf } from "./position";
import { readValues } from "./read-values";

/** Reads all that stands on the sheet of a name; `undefined` where the workbook has none. */
export function readNamedSheet(name: string): Promise<ReadArea | undefined> {
  return inExcel((context) => readNamed(context, name));
}

/** The same as a part of other work. */
export async function readNamed(
  context: Excel.RequestContext,
  name: string,
): Promise<ReadArea | undefined> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load("id,name");
  await context.sync();
  if (sheet.isNullObject) return undefined;
  const used = sheet.getRange().getUsedRangeOrNullObject(true);
  askPosition(used);
  await context.sync();
  const block = used.isNullObject ? { row: 0, column: 0, rows: 0, columns: 0 } : positionOf(used);
  const area: CellArea = { sheetId: sheet.id, sheetName: sheet.name, ...block };
  const values = block.rows === 0 ? [] : await readValues(context, area);
  return { area, address: areaAddress(area), values };
}
