import type { CellArea, CellPlace, Mark, ReadArea, SheetHost } from "../../src/hosts/sheet-host";
import { areaAddress } from "../../src/hosts/cell-address";
import type { CellValue } from "../../src/measure/cell-value";
import { Problem } from "../../src/measure/problem";

/** A spreadsheet for the tests of the pane: one sheet in memory, and a record of what was asked. */
export function fakeHost(cells: CellValue[][], top = 0, left = 0) {
  const sheet = { sheetId: "s1", sheetName: "Loads" };
  const asked = {
    marks: [] as Mark[],
    selected: [] as CellPlace[],
    scopes: [] as string[],
    markedSheet: undefined as string | undefined,
  };
  const edits = new Set<(sheetId: string) => void>();
  const read = (area: CellArea): ReadArea => {
    const values = Array.from({ length: area.rows }, (_, r) =>
      Array.from({ length: area.columns }, (_, c) => cells[area.row + r - top]?.[c] ?? null),
    );
    return { area, address: areaAddress(area), values };
  };
  const whole = (): CellArea => ({
    ...sheet,
    row: top,
    column: left,
    rows: cells.length,
    columns: cells[0]!.length,
  });
  /** Other sheets of the workbook, by name. */
  const others = new Map<string, CellValue[][]>();
  const readNamed = (name: string): ReadArea | undefined => {
    const values = others.get(name);
    if (!values) return undefined;
    const columns = Math.max(0, ...values.map((row) => row.length));
    const area = {
      sheetId: name,
      sheetName: name,
      row: 0,
      column: 0,
      rows: values.length,
      columns,
    };
    const filled = values.map((row) => Array.from({ length: columns }, (_, i) => row[i] ?? null));
    return { area, address: areaAddress(area), values: filled };
  };
  const host: SheetHost = {
    decimalMark: async () => ".",
    read: async (scope) => {
      asked.scopes.push(scope);
      return read(whole());
    },
    sheetTops: async (rows) => {
      const area = whole();
      return [read({ ...area, rows: Math.min(rows, area.rows) })];
    },
    // The table is all that the sheet holds.
    showsPictures: false,
    readAgain: async ({ area }) => {
      if (area.sheetId === sheet.sheetId) return read(whole());
      throw new Problem("sheet-gone");
    },
    select: async (place, along) => {
      asked.selected.push(place);
      return along ? read(along).values : [];
    },
    mark: async (marks, _, checked) => {
      asked.marks = [...marks];
      asked.markedSheet = checked?.[0]?.area.sheetId;
      return { cells: marks.length, notes: 0, remarks: ["A remark of the spreadsheet."] };
    },
    unmark: async () => ({ cells: 3, notes: 2, remarks: [] }),
    readSheet: async (name) => readNamed(name),
    addLines: async (name, lines) => {
      others.set(name, [
        ...(others.get(name) ?? []),
        ...lines(readNamed(name)).map((line) => [...line]),
      ]);
      return readNamed(name)!;
    },
    writeResultsSheet: async (name) => `${name} 2`,
    insertFormula: async () => "C5",
    workbookName: async () => "loads.xlsx",
    datesFrom: async () => 1900,
    addSheet: async (name, table) => {
      if (others.has(name)) throw new Problem("changed-meanwhile");
      others.set(
        name,
        table.map((line) => [...line]),
      );
    },
    writeCells: async (before, blocks) => {
      const values = others.get(before.area.sheetName)!;
      for (const { row, column, values: lines } of blocks)
        lines.forEach((line, r) =>
          line.forEach((value, c) => {
            if (value !== null) (values[row + r] ??= [])[column + c] = value;
          }),
        );
    },
    settings: async () => ({}),
    saveSettings: async () => {},
    onSelectionChange: async () => () => {},
    onEdit: async (listener) => {
      edits.add(listener);
      return () => void edits.delete(listener);
    },
  };
  const edit = (sheetId = sheet.sheetId) => edits.forEach((tell) => tell(sheetId));
  return { host, asked, edit, whole, others };
}

export const HEADER = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Foam"];
