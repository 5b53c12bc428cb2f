import type { ChartOrder } from "../sheet-host";
import { writeNewSheet } from "./results-sheet";

/** Rows that the chart is high, and columns that it is wide. */
const HIGH = 24;
const WIDE = 11;

/**
 * Puts numbers and the line chart drawn from them on a new sheet and shows it.
 *
 * @returns The name of the sheet.
 * @throws Problem `results-too-long`.
 */
export function addLineChart({ sheetName, title, names, lines }: ChartOrder): Promise<string> {
  // The corner stays blank, so that Excel takes the first column for the names of the points.
  const headers = ["", ...lines.map(({ name }) => name)];
  const rows = names.map((name, i) => [name, ...lines.map(({ values }) => values[i] ?? null)]);
  return writeNewSheet(sheetName, [headers, ...rows], (sheet, table) => {
    const chart = sheet.charts.add(Excel.ChartType.lineMarkers, table, Excel.ChartSeriesBy.columns);
    chart.title.text = title;
    const left = headers.length + 1;
    chart.setPosition(
      sheet.getRangeByIndexes(1, left, 1, 1),
      sheet.getRangeByIndexes(HIGH, left + WIDE, 1, 1),
    );
  });
}
