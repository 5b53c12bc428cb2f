import { areaAfter } from "../../src/hosts/cells-moved";

/** A table in rows 5 to 8 of a sheet, counted from 0. */
const TABLE = { sheetId: "s1", sheetName: "Loads", row: 5, column: 0, rows: 4, columns: 3 };

// Each derived by drawing the rows on paper: what lies on rows 5 6 7 8 before, and where it lies after.
test.each([
  { what: "2 rows put in far above", at: 0, count: 2, row: 7, rows: 4 },
  { what: "a row put in right above the headers", at: 5, count: 1, row: 6, rows: 4 },
  { what: "2 rows put in below the headers", at: 6, count: 2, row: 5, rows: 6 },
  { what: "a row put in above the last one", at: 8, count: 1, row: 5, rows: 5 },
  { what: "a row put in right below the last one", at: 9, count: 1, row: 5, rows: 4 },
  { what: "a row put in far below", at: 20, count: 1, row: 5, rows: 4 },
  { what: "3 rows taken out above", at: 1, count: -3, row: 2, rows: 4 },
  { what: "rows 4 and 5 taken out", at: 4, count: -2, row: 4, rows: 3 },
  { what: "rows 6 and 7 taken out", at: 6, count: -2, row: 5, rows: 2 },
  { what: "rows 8 and 9 taken out", at: 8, count: -2, row: 5, rows: 3 },
  { what: "a row taken out below", at: 9, count: -1, row: 5, rows: 4 },
  { what: "all of them taken out, and more", at: 3, count: -9, row: 3, rows: 1 },
])("$what", ({ at, count, row, rows }) => {
  expect(areaAfter(TABLE, { axis: "row", at, count })).toEqual({ ...TABLE, row, rows });
});

/** A table in columns 1 to 3 (B to D). */
const WIDE = { sheetId: "s1", sheetName: "Loads", row: 0, column: 1, rows: 9, columns: 3 };

test.each([
  { what: "a column put in at the left edge of the sheet", at: 0, count: 1, column: 2, columns: 3 },
  { what: "a column put in at the left edge of the table", at: 1, count: 1, column: 2, columns: 3 },
  { what: "2 columns put in inside", at: 2, count: 2, column: 1, columns: 5 },
  { what: "a column put in right behind the last one", at: 4, count: 1, column: 1, columns: 3 },
  { what: "the first column taken out", at: 1, count: -1, column: 1, columns: 2 },
])("$what", ({ at, count, column, columns }) => {
  const moved = { axis: "column", at, count } as const;
  expect(areaAfter(WIDE, moved)).toEqual({ ...WIDE, column, columns });
});
