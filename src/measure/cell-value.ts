/** An error that stands in a cell, such as #N/A. */
export interface CellError {
  readonly error: string;
}

/** What a spreadsheet cell can hold once a host has handed it over. `null` and "" are blank. */
export type CellValue = string | number | boolean | null | CellError;

const SAYS_NOTHING = new Set(["", "-", "–", "—", "n/a", "na", "n.a.", "none recorded"]);
const ERROR_TEXT = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA)/;

/** Whether the value is an error of the spreadsheet. */
export function isCellError(value: CellValue): value is CellError {
  return typeof value === "object" && value !== null;
}

/** Whether a cell says nothing: empty, spaces only, or one of the marks people put for "nothing". */
export function isBlank(value: CellValue | undefined): boolean {
  if (value === null || value === undefined) return true;
  return typeof value === "string" && SAYS_NOTHING.has(value.trim().toLowerCase());
}

/**
 * Turns whatever a host hands over for a cell into a cell value.
 *
 * Hosts hand over plain values, error texts, error objects with a `code`, and data types with a
 * `basicValue` (formatted numbers, dates, entities). Anything else is shown as text.
 */
export function cellValueFrom(raw: unknown): CellValue {
  if (raw === null || raw === undefined) return null;
  if (typeof raw === "number" || typeof raw === "boolean") return raw;
  if (typeof raw === "string") return ERROR_TEXT.test(raw) ? { error: raw } : raw;
  if (typeof raw !== "object") return String(raw);
  const held = raw as Record<string, unknown>;
  if (typeof held.error === "string") return { error: held.error };
  if (typeof held.code === "string") return { error: held.code };
  if ("basicValue" in held) return cellValueFrom(held.basicValue);
  return held instanceof Error ? { error: "#VALUE!" } : "[object]";
}

/** The value as a reader of the sheet sees it, for use in a sentence. */
export function shownValue(value: CellValue | undefined): string {
  if (value === null || value === undefined) return "";
  return isCellError(value) ? value.error : String(value);
}
