import { overlap, rowsOf, type Rectangle } from "./block";
import { hold, type Held, type SheetModel } from "./sheet-model";
import type { WorkbookModel } from "./workbook-model";

/* What a user does to a sheet by hand, with what Excel does to formats, notes and merges along the way. */

/** Types into a cell. */
export function edit(sheet: SheetModel, row: number, column: number, held: Held): void {
  hold(sheet, row, column, held);
}

/** Writes the note of a cell, in place of one that it has. */
export function giveNote(sheet: SheetModel, row: number, column: number, content: string): void {
  const note = sheet.notes.find((one) => one.row === row && one.column === column);
  if (note) note.content = content;
  else sheet.notes.push({ row, column, content });
}

/** Inserts rows above a row: what spans it grows, what lies below moves down. */
export function insertRows(sheet: SheetModel, at: number, count: number): void {
  while (sheet.grid.length < at) sheet.grid.push(undefined);
  sheet.grid.splice(at, 0, ...Array.from({ length: count }, () => undefined));
  moveAll(sheet, (block) => ({
    ...block,
    top: block.top >= at ? block.top + count : block.top,
    bottom: block.bottom >= at ? block.bottom + count : block.bottom,
  }));
}

/** Deletes rows: what spans them shrinks, what lies on them only is gone. */
export function deleteRows(sheet: SheetModel, at: number, count: number): void {
  sheet.grid.splice(at, count);
  const after = (row: number): number => (row < at ? row : Math.max(at, row - count));
  moveAll(sheet, (block) => {
    const top = after(block.top);
    const bottom = block.bottom < at ? block.bottom : after(block.bottom + 1) - 1;
    return bottom < top ? undefined : { ...block, top, bottom };
  });
}

/** Inserts columns before a column. */
export function insertColumns(sheet: SheetModel, at: number, count: number): void {
  sheet.grid = sheet.grid.map((cells) => {
    if (!cells || cells.length < at) return cells;
    return [...cells.slice(0, at), ...Array<Held>(count).fill(""), ...cells.slice(at)];
  });
  moveAll(sheet, (block) => ({
    ...block,
    left: block.left >= at ? block.left + count : block.left,
    right: block.right >= at ? block.right + count : block.right,
  }));
}

/** Deletes columns. */
export function deleteColumns(sheet: SheetModel, at: number, count: number): void {
  sheet.grid = sheet.grid.map(
    (cells) => cells && [...cells.slice(0, at), ...cells.slice(at + count)],
  );
  const after = (column: number): number => (column < at ? column : Math.max(at, column - count));
  moveAll(sheet, (block) => {
    const left = after(block.left);
    const right = block.right < at ? block.right : after(block.right + 1) - 1;
    return right < left ? undefined : { ...block, left, right };
  });
}

/** Sorts rows by a column. Fills and notes go with their cells; conditional formats stay. */
export function sortRows(sheet: SheetModel, block: Rectangle, by: number): boolean {
  if (sheet.merges.some((merge) => overlap(merge, block))) return false;
  const order = Array.from({ length: rowsOf(block) }, (_, i) => block.top + i);
  const key = (row: number): string => String(sheet.grid[row]?.[by] ?? "￿");
  order.sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : a - b));
  const rows = order.map((row) => sheet.grid[row]);
  rows.forEach((cells, i) => (sheet.grid[block.top + i] = cells));
  const newRow = new Map(order.map((row, i) => [row, block.top + i]));
  for (const placed of [...sheet.fills, ...sheet.notes, ...sheet.comments, ...sheet.formulas]) {
    placed.row = newRow.get(placed.row) ?? placed.row;
  }
  return true;
}

/** Copies a sheet with everything on it, and puts the copy behind it. */
export function copySheet(workbook: WorkbookModel, sheet: SheetModel): SheetModel {
  const copy = structuredClone(sheet);
  copy.id = workbook.newId();
  copy.name = `${sheet.name} (${workbook.sheets.length + 1})`;
  for (const one of [...copy.formats, ...copy.tables, ...copy.comments]) one.id = workbook.newId();
  workbook.sheets.splice(workbook.sheets.indexOf(sheet) + 1, 0, copy);
  return copy;
}

/** Copies a block of cells with its formats to another place. */
export function copyCells(sheet: SheetModel, from: Rectangle, down: number, right: number): void {
  const to = moved(from, down, right);
  const values: [number, number, Held][] = [];
  for (let row = from.top; row <= from.bottom; row += 1) {
    for (let column = from.left; column <= from.right; column += 1) {
      values.push([row + down, column + right, sheet.grid[row]?.[column] ?? ""]);
    }
  }
  for (const [row, column, held] of values) hold(sheet, row, column, held);
  for (const format of sheet.formats) {
    const parts = format.areas.flatMap((area) => overlap(area, from) ?? []);
    format.areas.push(...parts.map((part) => moved(part, down, right)));
  }
  sheet.notes = sheet.notes.filter((note) => !contains(to, note.row, note.column));
  for (const note of sheet.notes.filter(({ row, column }) => contains(from, row, column))) {
    sheet.notes.push({ ...note, row: note.row + down, column: note.column + right });
  }
}

function moved(block: Rectangle, down: number, right: number): Rectangle {
  return {
    top: block.top + down,
    left: block.left + right,
    bottom: block.bottom + down,
    right: block.right + right,
  };
}

function contains(block: Rectangle, row: number, column: number): boolean {
  return overlap(block, { top: row, left: column, bottom: row, right: column }) !== undefined;
}

type Move = (block: Rectangle) => Rectangle | undefined;

function moveAll(sheet: SheetModel, move: Move): void {
  const place = <T extends { row: number; column: number }>(list: T[]): T[] =>
    list.flatMap((one) => {
      const to = move({ top: one.row, left: one.column, bottom: one.row, right: one.column });
      return to ? [{ ...one, row: to.top, column: to.left }] : [];
    });
  const blocks = <T extends { block: Rectangle }>(list: T[]): T[] =>
    list.flatMap((one) => {
      const block = move(one.block);
      return block ? [{ ...one, block }] : [];
    });
  sheet.formulas = place(sheet.formulas);
  sheet.fills = place(sheet.fills);
  sheet.notes = place(sheet.notes);
  sheet.comments = place(sheet.comments);
  sheet.validations = blocks(sheet.validations);
  sheet.tables = blocks(sheet.tables);
  const rows = (list: number[]): number[] =>
    list.flatMap((row) => move({ top: row, left: 0, bottom: row, right: 0 })?.top ?? []);
  const columns = (list: number[]): number[] =>
    list.flatMap((column) => move({ top: 0, left: column, bottom: 0, right: column })?.left ?? []);
  sheet.hiddenRows = rows(sheet.hiddenRows);
  sheet.hiddenColumns = columns(sheet.hiddenColumns);
  sheet.merges = sheet.merges.flatMap((merge) => move(merge) ?? []);
  sheet.formats = sheet.formats
    .map((format) => ({ ...format, areas: format.areas.flatMap((area) => move(area) ?? []) }))
    .filter(({ areas }) => areas.length > 0);
}
