import { isBlank, type CellValue } from "../measure/cell-value";
import { kindOf, textOf } from "./evidence";
import type { FieldId } from "./fields";
import { recognise } from "./recognise";
import { remembered } from "./remembered";

/** A day, a time and a number are no labels, though there are letters in them. */
const OF_A_VALUE: ReadonlySet<string> = new Set(["date", "clock", "number"]);
/** A sheet that tells of the functions is none of tests. */
const NAME_OF_A_FUNCTION = /^\s*=?FRESH\./i;
/** More than this is a sentence, not a label. */
const LONGEST_LABEL = 80;

const said = remembered(
  (headers: readonly string[]) => recognise([{ headers, cells: [] }]).all[0]!,
  (headers) => headers.join("\n"),
);

/** "A-1" and "M-2" in a cell are names of samples or meters; headers may be readings so. */
const NAME_WITH_HYPHEN = /^\s*\p{L}-\d+\s*$/u;

/** The field that a text says outright, below its titles. */
export function fieldSaidBy(
  cell: CellValue | undefined,
  titles: readonly string[] = [],
): FieldId | undefined {
  if (!isLabelText(cell) || NAME_WITH_HYPHEN.test(cell)) return undefined;
  const found = said([...titles, cell.trim()]);
  return found.state === "read" ? found.field : undefined;
}

/** Fewer words may be a title or an answer. */
const FEWEST_WORDS = 3;

/** Whether a text is a line of words. */
export function isLine(text: string): boolean {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length >= FEWEST_WORDS;
}

/** Whether a text is a label by its words or its colon. */
export function isKnownLabel(cell: CellValue | undefined): boolean {
  if (!isLabelText(cell)) return false;
  if (IS_NAME.test(cell) || NAME_WITH_HYPHEN.test(cell)) return false;
  const { state } = said([cell.trim()]);
  return state === "read" || state === "asked" || endsWithColon(cell);
}

/** A sample's or a ticket's name, such as "T-5512" and "L2-1"; "R1", "Rdg 1" and "1st" may be labels. */
const IS_NAME =
  /^(?!\s*\d(?:st|nd|rd|th|re|ra|da|era?|[ea])\.?\s*$)(?!.*\p{L}{3})(?!\p{L}{1,2}[ .-]?\d$).*\d/u;

/** Whether a text may stand for nothing but a value: it says nothing that is known. */
export function saysNothing(cell: CellValue | undefined): boolean {
  if (!isLabelText(cell)) return true;
  const { state } = said([cell.trim()]);
  return !endsWithColon(cell) && (IS_NAME.test(cell) || state === "unknown" || state === "empty");
}

/** Whether a text ends as labels do. */
export function endsWithColon(cell: CellValue | undefined): boolean {
  return typeof cell === "string" && /:\s*$/.test(cell);
}

/** A label and its value in one cell, "Initial reading: 5.25"; a time has colons too. */
const LABEL_AND_VALUE = /^\s*([^:]*\p{L}[^:]*?)\s*:\s*(\S.*?)\s*$/su;

/** "Specified air 6 ± 1.5 %" and "Max. air 7.5 %": limits need no colon. */
const LABEL_AND_LIMITS = /^\s*(\p{L}[^:\d±]*?)\s+((?:±\s*)?\d[^:]*?)\s*$/su;

/** A label of a field with its value behind the colon; `undefined` for any other cell. */
export function labelAndValue(
  cell: CellValue | undefined,
): { readonly label: string; readonly value: string } | undefined {
  if (!isLabelText(cell)) return undefined;
  const [, label, value] = LABEL_AND_VALUE.exec(cell) ?? LABEL_AND_LIMITS.exec(cell) ?? [];
  const field = label === undefined ? undefined : fieldSaidBy(label);
  if (label === undefined || value === undefined || field === undefined) return undefined;
  const isLimit = field === "low" || field === "high" || field === "target";
  return cell.includes(":") || isLimit ? { label, value } : undefined;
}

/** What a test or its load is called, behind the word for it: "Sample A", "Ticket #101". */
const NAMED =
  /^\s*(\p{L}[\p{L} .]*?)\s*(?:#|№|N[o°º]\.?|Nr\.?)?\s*((?:\p{L}{0,4}[-/]?)?\d[\w/-]*|\p{Lu})\s*$/u;
const NAMES: ReadonlySet<FieldId> = new Set<FieldId>(["sample", "load"]);

/** The name of a test or its load in a title, with the word before it; `undefined` for any other cell. */
export function nameInTitle(
  cell: CellValue | undefined,
): { readonly label: string; readonly value: string } | undefined {
  if (!isLabelText(cell)) return undefined;
  const [, label, value] = NAMED.exec(cell) ?? [];
  if (label === undefined || value === undefined) return undefined;
  const field = fieldSaidBy(label);
  return field && NAMES.has(field) ? { label, value } : undefined;
}

/** Whether a cell may be a label: a short text with letters. */
export function isLabelText(cell: CellValue | undefined): cell is string {
  return (
    typeof cell === "string" &&
    cell.length <= LONGEST_LABEL &&
    /\p{L}/u.test(cell) &&
    !isBlank(cell) &&
    !NAME_OF_A_FUNCTION.test(cell) &&
    !OF_A_VALUE.has(kindOf(cell, textOf(cell)))
  );
}
