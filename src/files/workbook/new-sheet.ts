import { escaped } from "../package/xml";
import { writtenCell, type CellContent } from "./cell-content";
import { cellReference } from "./cell-reference";

/** A sheet to be added behind the others. */
export interface NewSheet {
  readonly name: string;
  readonly rows: readonly (readonly CellContent[])[];
  /** Whether the first row is a heading, written bold. */
  readonly heading: boolean;
  /** Widths of columns, in characters. */
  readonly widths: readonly number[];
}

const NAMESPACE = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The part of a new sheet. @param bold The number of the format of a heading. */
export function sheetPart({ rows, heading, widths }: NewSheet, bold: number): string {
  const columns = widths.map(
    (width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`,
  );
  const written = rows.map((row, r) => {
    const style = heading && r === 0 ? String(bold) : undefined;
    const cells = row.map((content, c) => writtenCell(cellReference(r, c), content, style));
    return `<row r="${r + 1}">${cells.join("")}</row>`;
  });
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n` +
    `<worksheet xmlns="${NAMESPACE}" xmlns:r="${RELATIONS}">` +
    (columns.length > 0 ? `<cols>${columns.join("")}</cols>` : "") +
    `<sheetData>${written.join("")}</sheetData></worksheet>`
  );
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
