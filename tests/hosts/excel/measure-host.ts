import { WEIGHTS } from "../../../src/fieldsheet/finding";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { CellArea, Mark } from "../../../src/hosts/sheet-host";
import type { EmulatedExcel } from "../../excel-client/emulated-excel";
import type { Held } from "../../excel-client/sheet-model";
import { WorkbookModel } from "../../excel-client/workbook-model";

/** What reading and marking a sheet of so many rows takes. Bytes are those on the wire. */
export interface HostFigures {
  readonly rows: number;
  readonly readSyncs: number;
  readonly marks: number;
  readonly markSyncs: number;
  /** Objects of Excel's that the client library held, all syncs together. */
  readonly objects: number;
  readonly largestRequest: number;
  readonly largestResponse: number;
  readonly seconds: number;
}

/** Sheets of so many rows are measured. */
export const MEASURED_ROWS = [1_000, 10_000, 100_000, 1_000_000];

const COLUMNS = 12;
const HEADERS: readonly Held[] = [
  ...["Sample", "Load", "Time", "First reading", "Second reading", "Final reading"],
  ...["Cups", "Alcohol (oz)", "Foam", "Packed", "Reported air", "Remarks"],
];

/**
 * Reads a sheet of 12 columns and marks one cell in a hundred, scattered, on an emulated Excel.
 *
 * @param rows Rows below the headers.
 */
export async function measureHost(excel: EmulatedExcel, rows: number): Promise<HostFigures> {
  excel.workbook = new WorkbookModel();
  const sheet = excel.workbook.front;
  sheet.grid = [HEADERS, ...Array.from({ length: rows }, (_, i) => loadNumber(i))];
  const bottom = rows;
  excel.workbook.select(sheet, { top: 0, left: 0, bottom, right: COLUMNS - 1 });
  const host = excelHost();

  const begun = performance.now();
  excel.startCounting();
  const read = await host.read("selection");
  const { area, values } = read;
  await host.decimalMark();
  const reading = excel.traffic;
  if (values.length !== rows + 1) throw new Error("not all rows were read");

  excel.startCounting();
  const marks = scatteredMarks(area);
  const report = await host.mark(marks, false, [read]);
  if (report.cells !== marks.length) throw new Error("not all cells were marked");
  const mark = excel.traffic;

  return {
    rows,
    readSyncs: reading.calls,
    marks: marks.length,
    markSyncs: mark.calls,
    objects: reading.objects + mark.objects,
    largestRequest: Math.max(reading.largestRequest, mark.largestRequest),
    largestResponse: Math.max(reading.largestResponse, mark.largestResponse),
    seconds: (performance.now() - begun) / 1_000,
  };
}

/** A row of a field sheet, about 74 bytes long on the wire. */
function loadNumber(i: number): Held[] {
  const reading = 4 + (i % 17) / 4;
  return [
    ...[`L-${10_000 + i}`, i + 1, 0.354166 + (i % 600) / 1_440, reading, reading, reading],
    ...[i % 3, 24, i % 2, i % 5 === 0, reading - 0.25, i % 11 === 0 ? "truck late" : ""],
  ];
}

/** One cell in a hundred, hardly any under each other: the worst case for addresses. */
function scatteredMarks({ sheetId, rows, columns }: CellArea): Mark[] {
  const cells = (rows - 1) * columns;
  return Array.from({ length: Math.floor(cells / 100) }, (_, i) => {
    const cell = i * 100 + ((i * 37) % 100);
    return {
      sheetId,
      row: 1 + Math.floor(cell / columns),
      column: cell % columns,
      weight: WEIGHTS[i % WEIGHTS.length] ?? "note",
      sentences: [],
    };
  });
}
