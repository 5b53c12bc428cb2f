import { Problem } from "../../measure/problem";
import { childElements, type Element } from "../package/xml";

/** What may follow the rows of a sheet, in the order that the standard (ECMA-376, 18.3.1.99) sets. */
const ORDER = [
  "sheetData",
  "sheetCalcPr",
  "sheetProtection",
  "protectedRanges",
  "scenarios",
  "autoFilter",
  "sortState",
  "dataConsolidate",
  "customSheetViews",
  "mergeCells",
  "phoneticPr",
  "conditionalFormatting",
  "dataValidations",
  "hyperlinks",
  "printOptions",
  "pageMargins",
  "pageSetup",
  "headerFooter",
  "rowBreaks",
  "colBreaks",
  "customProperties",
  "cellWatches",
  "ignoredErrors",
  "smartTags",
  "drawing",
  "legacyDrawing",
  "legacyDrawingHF",
  "drawingHF",
  "picture",
  "oleObjects",
  "controls",
  "webPublishItems",
  "tableParts",
  "extLst",
];
const ROWS_END = /<(?:\/(?:[\w.-]+:)?sheetData\s*|(?:[\w.-]+:)?sheetData\s*\/)>/g;

/** A sheet part in two: the rows can be long, and most of what is edited stands behind them. */
export interface SheetText {
  /** Up to the end of the rows. */
  readonly head: string;
  /** Behind the rows. */
  readonly tail: string;
  /** What the names of elements begin with: "" or "x:". */
  readonly prefix: string;
}

/** @throws Problem `file-damaged` where there is no sheet. */
export function sheetText(xml: string): SheetText {
  const [sheet, prefix] = /<(?:([\w.-]+):)?worksheet[\s>]/.exec(xml) ?? [];
  const tag = [...xml.matchAll(ROWS_END)].at(-1);
  if (!sheet || !tag) throw new Problem("file-damaged");
  const end = tag.index + tag[0].length;
  return { head: xml.slice(0, end), tail: xml.slice(end), prefix: prefix ? `${prefix}:` : "" };
}

/** What stands behind the rows with an element put in where the standard wants it, after its like. */
export function withElement(tail: string, name: string, element: string): string {
  const place = ORDER.indexOf(name);
  let at = 0;
  for (const each of childElements(tail)) if (ORDER.indexOf(each.name) <= place) at = each.end;
  return tail.slice(0, at) + element + tail.slice(at);
}

/** A text without some stretches of it. */
export function without(xml: string, elements: readonly Pick<Element, "start" | "end">[]): string {
  return [...elements]
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => text.slice(0, start) + text.slice(end), xml);
}
