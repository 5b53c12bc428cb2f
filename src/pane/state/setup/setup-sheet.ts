import type { ReadArea, SheetHost } from "../../../hosts/sheet-host";
import { isBlank, type CellValue } from "../../../measure/cell-value";
import type { DecimalMark } from "../../../measure/number-from-cell";
import { Problem } from "../../../measure/problem";
import { readSetup, type Setup } from "../../../reading/setup/setup";
import { SETUP_SHEET } from "../../../reading/setup/setup-sheet-name";
import { setupTables } from "../../../reading/setup/setup-tables";

/** The sheet of the workbook that holds the setup, as it was read last. */
export interface SetupSheet {
  readonly read: ReadArea;
  readonly setup: Setup;
}

/** What was found where the setup is kept. */
export interface SetupFound {
  readonly sheet?: SetupSheet;
  /** What there is to say: that the sheet is not ours, was renamed, is gone. */
  readonly amiss?: Problem;
  /** Whether nothing may be written: a sheet of that name is somebody else's, or ours has another name. */
  readonly inTheWay: boolean;
}

/**
 * Looks for the setup in the workbook.
 *
 * @param before As it was found the last time.
 */
export async function findSetup(
  host: Pick<SheetHost, "readSheet" | "readAgain">,
  before: SetupSheet | undefined,
  decimal: DecimalMark,
): Promise<SetupFound> {
  const found = await host.readSheet(SETUP_SHEET);
  const read = found && fromFirstCell(found);
  if (!read) return before ? nameOfNow(host, before) : { inTheWay: false };
  const { columns, mixes, settings } = setupTables(read.values);
  const holdsTables = columns.length + mixes.length + settings.length > 0;
  const isBare = read.values.every((row) => row.every(isBlank));
  if (!holdsTables && !isBare) {
    const { sheetName: sheet } = read.area;
    return { amiss: new Problem("setup-sheet-not-ours", { sheet }), inTheWay: true };
  }
  return { sheet: { read, setup: readSetup(read.values, decimal) }, inTheWay: false };
}

/** The same sheet from its first cell on, so that lines are counted as the sheet counts them. */
function fromFirstCell({ area, values, ...more }: ReadArea): ReadArea {
  const { row, column, rows, columns } = area;
  const above = Array.from({ length: row }, () => Array<CellValue>(column + columns).fill(null));
  const beside = Array<CellValue>(column).fill(null);
  return {
    ...more,
    area: { ...area, row: 0, column: 0, rows: row + rows, columns: column + columns },
    values: [...above, ...values.map((line) => [...beside, ...line])],
  };
}

/** Why a setup that was there is not found under its name. */
async function nameOfNow(
  host: Pick<SheetHost, "readAgain">,
  { read }: SetupSheet,
): Promise<SetupFound> {
  const sheet = SETUP_SHEET;
  const now = await host.readAgain(read).then(
    ({ area }) => area.sheetName,
    () => undefined,
  );
  return now === undefined
    ? { amiss: new Problem("setup-sheet-gone", { sheet }), inTheWay: false }
    : { amiss: new Problem("setup-sheet-renamed", { sheet, now }), inTheWay: true };
}
