import { childElements, childrenOf, type Element } from "../package/xml";
import { writtenCell, type CellContent } from "./cell-content";
import { blockOf, cellReference } from "./cell-reference";
import type { SheetText } from "./sheet-part";

/** A cell that was changed, position from 0. */
export interface ChangedCell {
  readonly row: number;
  readonly column: number;
  readonly content: CellContent;
}

/** A sheet with changed cells. */
export interface WithChangedCells {
  readonly sheet: SheetText;
  /** Cells that hold a formula for other cells too, and so were left as they are. */
  readonly left: readonly ChangedCell[];
}

const ROW =
  /<(?:[\w.-]+:)?row(?=[\s/>])(?:"[^"]*"|'[^']*'|[^>"'])*?(?:\/>|>[\s\S]*?<\/(?:[\w.-]+:)?row\s*>)/g;

/**
 * Puts contents into cells and leaves their formats and every other cell as they are. Rows and cells
 * that are not there yet are put in in their order.
 */
export function withChangedCells(
  sheet: SheetText,
  cells: readonly ChangedCell[],
): WithChangedCells {
  if (cells.length === 0) return { sheet, left: [] };
  const { prefix } = sheet;
  const byRow = new Map<number, ChangedCell[]>();
  for (const cell of cells) byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
  const waiting = [...byRow.keys()].sort((a, b) => a - b);
  const left: ChangedCell[] = [];
  const pieces: string[] = [];
  const [opening, rows, closing] = rowsOf(sheet);
  let from = 0;
  let row = -1;
  const newRow = (at: number) => {
    const written = byRow
      .get(at)!
      .sort(byColumn)
      .map((cell) => writtenAt(cell, undefined, prefix));
    const inside = written.join("");
    return inside && `<${prefix}row r="${at + 1}">${inside}</${prefix}row>`;
  };
  for (const match of rows.matchAll(ROW)) {
    const [element] = childElements(match[0]);
    row = element!.attributes.r ? Number(element!.attributes.r) - 1 : row + 1;
    pieces.push(rows.slice(from, match.index));
    while (waiting.length > 0 && waiting[0]! < row) pieces.push(newRow(waiting.shift()!));
    const changed = waiting[0] === row ? byRow.get(waiting.shift()!)! : undefined;
    pieces.push(changed ? changedRow(match[0], element!, changed, prefix, left) : match[0]);
    from = match.index + match[0].length;
  }
  pieces.push(...waiting.map(newRow), rows.slice(from));
  return { sheet: { ...sheet, head: opening + pieces.join("") + closing }, left };
}

function changedRow(
  xml: string,
  row: Element,
  cells: readonly ChangedCell[],
  prefix: string,
  left: ChangedCell[],
): string {
  const waiting = [...cells].sort(byColumn);
  const inside: string[] = [];
  let column = -1;
  for (const there of childrenOf(xml, row)) {
    if (there.name !== "c") {
      inside.push(xml.slice(there.start, there.end));
      continue;
    }
    const reference = there.attributes.r && blockOf(there.attributes.r);
    column = reference ? reference.left : column + 1;
    while (waiting.length > 0 && waiting[0]!.column < column)
      inside.push(writtenAt(waiting.shift()!, undefined, prefix));
    const as = xml.slice(there.start, there.end);
    if (waiting[0]?.column !== column) inside.push(as);
    else if (isForOthers(xml, there)) {
      left.push(waiting.shift()!);
      inside.push(as);
    } else inside.push(writtenAt(waiting.shift()!, there.attributes.s, prefix));
  }
  inside.push(...waiting.map((cell) => writtenAt(cell, undefined, prefix)));
  const tag = xml.slice(row.start, row.contentStart).replace(/\s*\/>$/, ">");
  // A row may say which columns it spans; one that now reaches further says nothing.
  const opening = tag.replace(/\sspans="[^"]*"/, "");
  return `${opening}${inside.join("")}</${prefix}row>`;
}

/** Whether the formula of a cell fills other cells too. */
function isForOthers(xml: string, cell: Element): boolean {
  const formula = childrenOf(xml, cell).find(({ name }) => name === "f");
  const { ref } = formula?.attributes ?? {};
  return ref !== undefined && ref !== cell.attributes.r;
}

function writtenAt(
  { row, column, content }: ChangedCell,
  style: string | undefined,
  prefix: string,
) {
  return writtenCell(cellReference(row, column), content, style, prefix);
}

function byColumn(a: ChangedCell, b: ChangedCell): number {
  return a.column - b.column;
}

/** What stands before the rows, the rows, and the closing tag; a sheet without a row has none of it. */
function rowsOf({ head, prefix }: SheetText): [opening: string, rows: string, closing: string] {
  const open = head.lastIndexOf(`<${prefix}sheetData`);
  const start = head.indexOf(">", open) + 1;
  const close = head.lastIndexOf(`</${prefix}sheetData`);
  if (close > open) return [head.slice(0, start), head.slice(start, close), head.slice(close)];
  return [`${head.slice(0, open)}<${prefix}sheetData>`, "", `</${prefix}sheetData>`];
}
