import { escaped } from "../package/xml";
import { blockOf, blockReference } from "./cell-reference";

/** What a file may hold in a cell. */
export type CellContent =
  null | string | number | boolean | { readonly error: string } | FormulaContent;

/** A formula with the result that it last had. */
export interface FormulaContent {
  readonly formula: string;
  readonly result: null | string | number | boolean | { readonly error: string };
  /** How far its results reach from the cell on, where they fill more than the cell itself. */
  readonly over?: { readonly rows: number; readonly columns: number };
}

/** Our functions have no dots in a file, and a prefix for functions of an add-in. */
const OURS = /\bFRESH((?:\.[A-Z\d]+)+)(?=\()/g;
const SPACE_AT_AN_END = /^\s|\s$|\n/;

/**
 * A cell as a file writes it.
 *
 * @param prefix What the names of elements begin with: "" or "x:".
 * @param style The number of its format, as the file writes it; undefined for the usual one.
 * @returns "" for a blank cell without a format.
 */
export function writtenCell(
  reference: string,
  content: CellContent,
  style: string | undefined,
  prefix = "",
): string {
  const s = style === undefined ? "" : ` s="${style}"`;
  const cell = (type: string, inside: string) =>
    `<${prefix}c r="${reference}"${s}${type && ` t="${type}"`}>${inside}</${prefix}c>`;
  const value = (text: string) => `<${prefix}v>${escaped(text)}</${prefix}v>`;
  if (content === null || content === "") return s && `<${prefix}c r="${reference}"${s}/>`;
  if (typeof content === "number")
    return Number.isFinite(content) ? cell("", value(String(content))) : "";
  if (typeof content === "boolean") return cell("b", value(content ? "1" : "0"));
  if (typeof content === "string") {
    const kept = SPACE_AT_AN_END.test(content) ? ' xml:space="preserve"' : "";
    const text = `<${prefix}t${kept}>${escaped(content)}</${prefix}t>`;
    return cell("inlineStr", `<${prefix}is>${text}</${prefix}is>`);
  }
  if ("error" in content) return cell("e", value(content.error));
  const { result } = content;
  const written = writtenFormula(reference, content, prefix);
  if (result === null) return cell("", written);
  if (typeof result === "object") return cell("e", written + value(result.error));
  if (typeof result === "string") return cell("str", written + value(result));
  if (typeof result === "boolean") return cell("b", written + value(result ? "1" : "0"));
  return cell("", written + value(String(result)));
}

/**
 * Results that reach over several cells, and those of functions of an add-in, which may, are stored as
 * array formulas: every program knows these.
 */
function writtenFormula(reference: string, { formula, over }: FormulaContent, prefix: string) {
  const stored = storedFormula(formula);
  const isPlain = !over && stored === formula.replace(/^=/, "");
  if (isPlain) return `<${prefix}f>${escaped(stored)}</${prefix}f>`;
  const { top, left } = blockOf(reference)!;
  const { rows, columns } = over ?? { rows: 1, columns: 1 };
  const block = { top, left, bottom: top + rows - 1, right: left + columns - 1 };
  return `<${prefix}f t="array" ref="${blockReference(block)}">${escaped(stored)}</${prefix}f>`;
}

/** A formula as a file stores it: without the equals sign, our functions under their stored names. */
function storedFormula(typed: string): string {
  return typed
    .replace(/^=/, "")
    .replace(OURS, (_, name: string) => `_xldudf_FRESH${name.replaceAll(".", "_")}`);
}
