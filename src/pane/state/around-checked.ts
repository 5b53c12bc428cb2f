import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import type { CellValue } from "../../measure/cell-value";

/** What belongs to a check and does not stand in its cells. */
export interface AroundChecked {
  /** The name of the file; "" where nobody tells. */
  readonly file: string;
  /** The cells of the sheet above what was checked, where titles and labels stand. */
  readonly above: readonly (readonly CellValue[])[];
}

export const NOTHING_AROUND: AroundChecked = { file: "", above: [] };

/** So far up titles are read. */
const MOST_ROWS = 60;

/** Reads it. What cannot be read is left out: a report is made without it. */
export async function aroundChecked(host: SheetHost, { area }: ReadArea): Promise<AroundChecked> {
  const [file, above] = await Promise.all([
    host.workbookName().catch(() => ""),
    area.row === 0 ? [] : rowsAbove(host, area).catch(() => []),
  ]);
  return { file, above };
}

async function rowsAbove(host: SheetHost, area: ReadArea["area"]): Promise<AroundChecked["above"]> {
  const tops = await host.sheetTops(Math.min(area.row, MOST_ROWS));
  const top = tops.find(({ area: { sheetId } }) => sheetId === area.sheetId);
  return top ? top.values.slice(0, Math.max(0, area.row - top.area.row)) : [];
}
