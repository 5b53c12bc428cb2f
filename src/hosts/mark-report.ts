import type { MarkReport } from "./sheet-host";

/** Brings together what was done sheet by sheet. */
export function totalOf(reports: readonly Partial<MarkReport>[]): MarkReport {
  return {
    cells: reports.reduce((sum, { cells = 0 }) => sum + cells, 0),
    notes: reports.reduce((sum, { notes = 0 }) => sum + notes, 0),
    remarks: reports.flatMap(({ remarks = [] }) => remarks),
  };
}
