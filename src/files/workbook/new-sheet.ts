import { escaped } from "../package/xml";
import { writtenCell, type CellContent } from "./cell-content";
import { cellReference } from "./cell-reference";
import type { PlacedPicture } from "./pictures-part";

/** A sheet to be added behind the others. */
export interface NewSheet {
  readonly name: string;
  readonly rows: readonly (readonly CellContent[])[];
  /** Whether the first row is a heading, written bold. */
  readonly heading: boolean;
  /** Widths of columns, in characters. */
  readonly widths: readonly number[];
  /** Further rows that are written bold, from 0. */
  readonly bold?: readonly number[];
  /** Whether it is made ready for paper: landscape, one page wide, with its name and page numbers. */
  readonly forPaper?: boolean;
  /** Rows with which a page begins on paper, from 0. */
  readonly breaks?: readonly number[];
  readonly pictures?: readonly PlacedPicture[];
}

const NAMESPACE = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
/** One page wide and as many high as it takes (ECMA-376, 18.3.1.65 and 18.3.1.63). */
const ONE_PAGE_WIDE = `<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>`;
const PAPER =
  `<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.7" header="0.3" footer="0.3"/>` +
  `<pageSetup orientation="landscape" fitToWidth="1" fitToHeight="0"/>` +
  `<headerFooter><oddFooter>&amp;L&amp;F, &amp;A&amp;R&amp;P / &amp;N</oddFooter></headerFooter>`;
const LAST_COLUMN = 16383;
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The part of a new sheet. @param bold The number of the format of a heading. */
export function sheetPart(
  { rows, heading, widths, bold: further = [], forPaper = false, breaks = [] }: NewSheet,
  bold: number,
): string {
  const boldRows = new Set([...(heading ? [0] : []), ...further]);
  const columns = widths.map(
    (width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`,
  );
  const written = rows.map((row, r) => {
    const style = boldRows.has(r) ? String(bold) : undefined;
    const cells = row.map((content, c) => writtenCell(cellReference(r, c), content, style));
    return `<row r="${r + 1}">${cells.join("")}</row>`;
  });
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n` +
    `<worksheet xmlns="${NAMESPACE}" xmlns:r="${RELATIONS}">` +
    (forPaper ? ONE_PAGE_WIDE : "") +
    (columns.length > 0 ? `<cols>${columns.join("")}</cols>` : "") +
    `<sheetData>${written.join("")}</sheetData>` +
    `${forPaper ? PAPER : ""}${pageBreaks(breaks)}</worksheet>`
  );
}

/** A break stands behind the row that it names (ECMA-376, 18.3.1.74). */
function pageBreaks(rows: readonly number[]): string {
  if (rows.length === 0) return "";
  const all = rows.map((row) => `<brk id="${row}" max="${LAST_COLUMN}" man="1"/>`);
  const count = `count="${all.length}" manualBreakCount="${all.length}"`;
  return `<rowBreaks ${count}>${all.join("")}</rowBreaks>`;
}

/** The workbook part with one more sheet. @param relation What leads to the sheet's part. */
export function withSheet(xml: string, name: string, relation: string): string {
  const ids = [...xml.matchAll(/\bsheetId="(\d+)"/g)].map(([, id]) => Number(id));
  const end = /<\/((?:[\w.-]+:)?)sheets\s*>/.exec(xml)!;
  const line =
    `<${end[1]}sheet xmlns:r="${RELATIONS}" name="${escaped(name)}" ` +
    `sheetId="${Math.max(0, ...ids) + 1}" r:id="${relation}"/>`;
  return xml.slice(0, end.index) + line + xml.slice(end.index);
}
