/** The sheet of a workbook that holds its setup, in every language, so that it is found in every copy. */
export const SETUP_SHEET = "Fresh setup";

/** Whether a sheet is named so: spreadsheets do not tell capitals from small letters. */
export function isSetupSheet(name: string): boolean {
  return name.trim().toLowerCase() === SETUP_SHEET.toLowerCase();
}
