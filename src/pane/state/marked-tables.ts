import type { CellArea, Mark, ReadArea, SheetHost } from "../../hosts/sheet-host";
import { sameRead } from "../../hosts/trimmed";

/** So many tables of a sheet keep their marks; a sheet with more is a workbook of forms. */
const MOST_TABLES = 12;

/** A table as it was read when it was marked, with its marks. */
export interface MarkedTable {
  readonly read: ReadArea;
  readonly marks: readonly Mark[];
}

/** What becomes of the marks of other tables when one is marked. */
export interface OtherTables {
  /** Those that hold what was checked, so that their marks are put again. */
  readonly kept: readonly MarkedTable[];
  /** Those that hold something else by now, so that their marks go. */
  readonly changed: readonly MarkedTable[];
}

/** The tables that were marked since the pane was opened. */
export class MarkedTables {
  private tables: readonly MarkedTable[] = [];

  /** The marked tables of the same sheet that lie apart from one, looked at again. */
  async beside(read: ReadArea, host: SheetHost): Promise<OtherTables> {
    const kept: MarkedTable[] = [];
    const changed: MarkedTable[] = [];
    for (const table of this.tables) {
      if (!liesApart(table.read.area, read.area)) continue;
      const now = await host.readAgain(table.read).catch(() => undefined);
      const isSame = now !== undefined && sameRead(now, table.read);
      (isSame ? kept : changed).push(table);
    }
    return { kept, changed };
  }

  /** Whatever else was marked on the sheet of these is forgotten. */
  nowMarked(tables: readonly MarkedTable[]): void {
    const sheets = new Set(tables.map(({ read }) => read.area.sheetId));
    const elsewhere = this.tables.filter(({ read }) => !sheets.has(read.area.sheetId));
    this.tables = [...elsewhere, ...tables].slice(-MOST_TABLES);
  }

  none(): void {
    this.tables = [];
  }
}

/** Whether two areas of one sheet share no cell. */
function liesApart(one: CellArea, other: CellArea): boolean {
  if (one.sheetId !== other.sheetId) return false;
  const apart = (a: number, length: number, b: number, otherLength: number) =>
    a + length <= b || b + otherLength <= a;
  return (
    apart(one.row, one.rows, other.row, other.rows) ||
    apart(one.column, one.columns, other.column, other.columns)
  );
}
