import { escaped } from "../package/xml";

/** What a file may hold in a cell. */
export type CellContent =
  | null
  | string
  | number
  | boolean
  | { readonly error: string }
  | { readonly formula: string; readonly result: string | number | boolean | null };

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
  const { formula, result } = content;
  const stored = storedFormula(formula);
  const spreads = stored === formula.replace(/^=/, "") ? "" : ` t="array" ref="${reference}"`;
  const written = `<${prefix}f${spreads}>${escaped(stored)}</${prefix}f>`;
  if (result === null) return cell("", written);
  if (typeof result === "string") return cell("str", written + value(result));
  if (typeof result === "boolean") return cell("b", written + value(result ? "1" : "0"));
  return cell("", written + value(String(result)));
}

/** A formula as a file stores it: without the equals sign, our functions under their stored names. */
function storedFormula(typed: string): string {
  return typed
    .replace(/^=/, "")
    .replace(OURS, (_, name: string) => `_xldudf_FRESH${name.replaceAll(".", "_")}`);
}
