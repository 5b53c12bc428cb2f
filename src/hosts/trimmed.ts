import type { CellValue } from "../measure/cell-value";
import { areaAddress } from "./cell-address";
import { sameRows } from "./same-values";
import type { ReadArea } from "./sheet-host";

/** What was read without the empty rows and columns at its edges; one cell of it where all are empty. */
export function trimmed(read: ReadArea): ReadArea {
  const { area, values } = read;
  const rowIsEmpty = (row: number) => values[row]!.every(isEmpty);
  const columnIsEmpty = (column: number) => values.every((cells) => isEmpty(cells[column]!));
  const [rows, columns] = [values.length, values[0]?.length ?? 0];
  const [top, bottom] = filledSpan(rows, rowIsEmpty);
  const [left, right] = filledSpan(columns, columnIsEmpty);
  const whole = top === 0 && left === 0 && bottom === rows && right === columns;
  if (whole) return read;
  const now = {
    ...area,
    ...{ row: area.row + top, column: area.column + left },
    ...{ rows: bottom - top, columns: right - left },
  };
  return {
    ...read,
    area: now,
    address: areaAddress(now),
    values: values.slice(top, bottom).map((cells) => cells.slice(left, right)),
  };
}

/** Whether the same was read from the same place; empty rows and columns at the edges do not count. */
export function sameRead(one: ReadArea, other: ReadArea): boolean {
  const [a, b] = [trimmed(one), trimmed(other)];
  return (
    a.area.sheetId === b.area.sheetId &&
    a.area.row === b.area.row &&
    a.area.column === b.area.column &&
    sameRows(a.values, b.values)
  );
}

/** The first filled one of so many rows or columns, and the first one behind the last filled. */
function filledSpan(count: number, isEmptyAt: (i: number) => boolean): [from: number, to: number] {
  let [from, to] = [0, count];
  while (to > 1 && isEmptyAt(to - 1)) to -= 1;
  while (from < to - 1 && isEmptyAt(from)) from += 1;
  return [from, to];
}

function isEmpty(value: CellValue): boolean {
  return value === null || (typeof value === "string" && value.trim() === "");
}
