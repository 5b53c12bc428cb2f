import type { CellArea } from "../../../src/hosts/sheet-host";
import type { CellValue } from "../../../src/measure/cell-value";
import { areaWithRoom, tableNow } from "../../../src/pane/state/area-now";

const AREA: CellArea = { sheetId: "s", sheetName: "S", row: 2, column: 1, rows: 3, columns: 1 };
const read = (...column: CellValue[]) => ({
  area: { ...AREA, rows: column.length },
  address: "",
  values: column.map((value) => [value]),
});

test("room ends with the largest sheet (Excel: 1,048,576 rows)", () => {
  expect(areaWithRoom(AREA).rows).toBeGreaterThan(AREA.rows);
  expect(areaWithRoom({ ...AREA, row: 1_048_570, rows: 6 }).rows).toBe(6);
});

test.each([
  ["as before", ["h", 1, 2, null, null], 3],
  ["rows were added", ["h", 1, 2, 3, 4, null], 5],
  ["something else stands further below", ["h", 1, 2, null, "x"], 3],
  ["rows were deleted", ["h", 1, null, null, null], 2],
  ["a row in the middle was cleared", ["h", null, 2, null, null], 3],
  ["everything was cleared", [null, null, null, null], 1],
])("%s", (_, column, rows) => {
  const now = tableNow(read(...column), AREA.rows);
  expect(now.area.rows).toBe(rows);
  expect(now.values).toHaveLength(rows);
  expect(now.address).toBe(rows === 1 ? "S!B3" : `S!B3:B${rows + 2}`);
});
