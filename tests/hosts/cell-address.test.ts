import fc from "fast-check";
import {
  areaAddress,
  blockAddress,
  blockOf,
  columnLetters,
  columnPosition,
  firstCellOf,
} from "../../src/hosts/cell-address";

// Source: how Excel letters its 16,384 columns, A to XFD.
test.each([
  [0, "A"],
  [25, "Z"],
  [26, "AA"],
  [51, "AZ"],
  [52, "BA"],
  [701, "ZZ"],
  [702, "AAA"],
  [16_383, "XFD"],
])("column %i is %s", (position, letters) => {
  expect(columnLetters(position)).toBe(letters);
  expect(columnPosition(letters)).toBe(position);
});

test("every column has letters of its own that lead back to it", () => {
  fc.assert(
    fc.property(fc.nat(16_383), (position) => {
      expect(columnPosition(columnLetters(position))).toBe(position);
    }),
  );
});

test.each([
  [{ row: 4, column: 2, rows: 1, columns: 1 }, "C5"],
  [{ row: 4, column: 2, rows: 5, columns: 1 }, "C5:C9"],
  [{ row: 0, column: 0, rows: 29, columns: 14 }, "A1:N29"],
])("a block is written as people write it: %j is %s", (block, address) => {
  expect(blockAddress(block)).toBe(address);
});

// Source: when Excel itself puts quotes around the name of a sheet in a formula; from memory.
test.each([
  ["Loads", "Loads!A1"],
  ["Day 1", "'Day 1'!A1"],
  ["Smith's", "'Smith''s'!A1"],
  ["2026-05-31", "'2026-05-31'!A1"],
  ["AB12", "'AB12'!A1"],
  ["R1C1", "'R1C1'!A1"],
])("a sheet named %s is written %s", (sheetName, address) => {
  const area = { sheetId: "s", sheetName, row: 0, column: 0, rows: 1, columns: 1 };
  expect(areaAddress(area)).toBe(address);
});

test.each([
  ["B3", 2, 1],
  ["$B$3:$D$9", 2, 1],
  ["Loads!B3", 2, 1],
  ["B3,F5", 2, 1],
  ["C:D", 0, 2],
  ["4:6", 3, 0],
])("the first cell of %s", (address, row, column) => {
  expect(firstCellOf(address)).toEqual({ row, column });
});

test.each([
  ["A1:N29", { row: 0, column: 0, rows: 29, columns: 14 }],
  [" $c$5 ", { row: 4, column: 2, rows: 1, columns: 1 }],
  ["D9:C5", { row: 4, column: 2, rows: 5, columns: 2 }],
  ["A0", undefined],
  ["Loads", undefined],
  ["", undefined],
])("the cells that “%s” names", (typed, block) => {
  expect(blockOf(typed)).toEqual(block);
});
