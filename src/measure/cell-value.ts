/** An error that stands in a cell, such as #N/A. */
export interface CellError {
  readonly error: string;
}

/** What a spreadsheet cell can hold once a host has handed it over. `null` and "" are blank. */
export type CellValue = string | number | boolean | null | CellError;

/**
 * A 0 that may be a blank cell, from a spreadsheet that is not known to tell the two apart. It is read as
 * neither: like an error, it has to be named.
 */
export const ZERO_OR_BLANK: CellError = { error: "0 or blank" };

/** How what says nothing begins; most cells are told by it. */
const MAY_SAY_NOTHING = /^(?:[\s–—nNeEsS-]|$)/;
const SAYS_NOTHING = new Set([
  ...["", "-", "–", "—", "--", "---", "----", "- -", "n/a", "na", "n.a.", "none recorded"],
  ...[
    "n. a.",
    "not applicable",
    "not req'd",
    "not required",
    "not needed",
    "no aplica",
    "no requerida",
  ],
  ...["sans objet", "entfällt", "entf.", "nicht erforderlich"],
]);
const ERROR_TEXT = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA)/;

/** The largest number that a cell can hold, and the smallest above 0. */
const LARGEST = 9.99999999999999e307;
const SMALLEST = 2.2250738585072014e-308;

/** Nothing that is read as a number, a date or an amount is written with more characters than this. */
const LONGEST_WRITTEN = 300;

/** More of a cell's text than this is not quoted in a sentence. */
const QUOTED_LENGTH = 60;

/**
 * The number as a cell can hold it: finite, of a size that fits, and never −0. `undefined` for what no
 * cell can hold. Every number comes in through here.
 */
export function cellNumber(value: number): number | undefined {
  const size = Math.abs(value);
  if (!(size <= LARGEST)) return undefined;
  return size < SMALLEST ? 0 : value;
}

/** Whether the value is an error of the spreadsheet. */
export function isCellError(value: CellValue | undefined): value is CellError {
  return typeof value === "object" && value !== null;
}

/** Whether a cell says nothing: empty, spaces only, or one of the marks people put for "nothing". */
export function isBlank(value: CellValue | undefined): boolean {
  if (typeof value !== "string") return value === null || value === undefined;
  return MAY_SAY_NOTHING.test(value) && SAYS_NOTHING.has(value.trim().toLowerCase());
}

/**
 * Turns whatever a host hands over for a cell into a cell value.
 *
 * Hosts hand over plain values, error texts, error objects with a `code`, and data types with a
 * `basicValue` (formatted numbers, dates, entities). Anything else is shown as text.
 */
export function cellValueFrom(raw: unknown): CellValue {
  if (raw === null || raw === undefined) return null;
  if (typeof raw === "number") return cellNumber(raw) ?? { error: "#NUM!" };
  if (typeof raw === "boolean") return raw;
  if (typeof raw === "string") return ERROR_TEXT.test(raw) ? { error: raw } : raw;
  if (typeof raw !== "object") return String(raw);
  const held = raw as Record<string, unknown>;
  if (typeof held.error === "string") return { error: held.error };
  if (typeof held.code === "string") return { error: held.code };
  if ("basicValue" in held) return cellValueFrom(held.basicValue);
  return held instanceof Error ? { error: "#VALUE!" } : "[object]";
}

/** The value as a reader of the sheet sees it. */
export function shownValue(value: CellValue | undefined): string {
  if (value === null || value === undefined) return "";
  return isCellError(value) ? value.error : String(value);
}

/** The value as a sentence quotes it: a long text is cut short. */
export function quoted(value: CellValue | undefined): string {
  const text = shownValue(value);
  return text.length <= QUOTED_LENGTH ? text : `${text.slice(0, QUOTED_LENGTH - 1)}…`;
}

/**
 * The text of a cell as its readers look at it, trimmed. Of one that is far too long they see the beginning
 * and a sign that nobody reads as a number, so that no pattern works its way through 32,767 characters.
 */
export function writtenIn(text: string): string {
  const trimmed = text.trim();
  return trimmed.length <= LONGEST_WRITTEN ? trimmed : `${trimmed.slice(0, LONGEST_WRITTEN)}…`;
}
