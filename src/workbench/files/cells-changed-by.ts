import type { IRange } from "@univerjs/core";

type Matrix = Readonly<Record<number, Readonly<Record<number, unknown>>>>;
/** A cell on the sheet with the id. */
type Place = readonly [sheetId: string, row: number, column: number];

/** The cells that the spreadsheet is about to change: by typing and pasting, moving, sorting. */
export function* cellsChangedBy(id: string, params: object): Generator<Place> {
  if (id === "sheet.mutation.set-range-values") {
    const { subUnitId = "", cellValue } = params as { subUnitId?: string; cellValue?: Matrix };
    yield* cellsOf(subUnitId, cellValue);
  } else if (id === "sheet.mutation.move-range") {
    const { from, to } = params as Record<"from" | "to", { subUnitId: string; value: Matrix }>;
    yield* cellsOf(from.subUnitId, from.value);
    yield* cellsOf(to.subUnitId, to.value);
  } else if (id === "sheet.mutation.reorder-range") {
    const { subUnitId, range } = params as { subUnitId: string; range: IRange };
    for (let row = range.startRow; row <= range.endRow; row++)
      for (let column = range.startColumn; column <= range.endColumn; column++)
        yield [subUnitId, row, column];
  }
}

function* cellsOf(sheetId: string, matrix: Matrix = {}): Generator<Place> {
  for (const [row, cells] of Object.entries(matrix))
    for (const column of Object.keys(cells ?? {})) yield [sheetId, Number(row), Number(column)];
}
