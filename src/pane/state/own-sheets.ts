/** The name of a sheet that holds a report, in every language; a further one has a number behind it. */
export const REPORT_SHEET = "Fresh report";

/** Whether a sheet is a report of ours: the tests in it are those of another sheet. */
export function isReportSheet(name: string): boolean {
  return new RegExp(`^${REPORT_SHEET}(?: \\(\\d+\\))?$`).test(name);
}
