import { cellCount, cellRuns } from "../../../src/hosts/workbench/cell-runs";
import { atOnce } from "../../../src/hosts/in-slices";
import { filledBlockInSteps } from "../../../src/hosts/workbench/filled-block";

/** Where filled cells are, drawn: "x" is filled. */
function blockIn(drawing: string, row: number, column: number) {
  const lines = drawing.split("/");
  const start = { top: row, left: column, bottom: row, right: column };
  const within = {
    top: 0,
    left: 0,
    bottom: lines.length - 1,
    right: Math.max(...lines.map((line) => line.length)) - 1,
  };
  return atOnce(filledBlockInSteps(start, (r, c) => lines[r]?.[c] === "x", within));
}

test.each([
  ["a table", "xxx/xxx/xxx", 1, 1, { top: 0, left: 0, bottom: 2, right: 2 }],
  ["a table with holes", "xxx/x.x/xxx", 1, 1, { top: 0, left: 0, bottom: 2, right: 2 }],
  [
    "two tables, a blank column between",
    "xx.xx/xx.xx",
    0,
    4,
    { top: 0, left: 3, bottom: 1, right: 4 },
  ],
  [
    "two tables, a blank row between",
    "xx/xx/../xx",
    3,
    0,
    { top: 3, left: 0, bottom: 3, right: 1 },
  ],
  ["cells that touch at a corner", "x../.x./..x", 0, 0, { top: 0, left: 0, bottom: 2, right: 2 }],
  ["a blank cell beside a table", "xx./xx.", 1, 2, { top: 0, left: 0, bottom: 1, right: 1 }],
  ["a blank cell far from everything", "x..../...../.....", 2, 4, undefined],
])("the block around a cell of %s", (_, drawing, row, column, block) => {
  expect(blockIn(drawing, row, column)).toEqual(block);
});

test("cells below each other become one rectangle, each cell counted once", () => {
  const runs = cellRuns([
    { row: 3, column: 1 },
    { row: 1, column: 1 },
    { row: 2, column: 1 },
    { row: 2, column: 1 },
    { row: 2, column: 2 },
    { row: 5, column: 1 },
  ]);
  expect(runs).toEqual([
    { startRow: 1, endRow: 3, startColumn: 1, endColumn: 1 },
    { startRow: 5, endRow: 5, startColumn: 1, endColumn: 1 },
    { startRow: 2, endRow: 2, startColumn: 2, endColumn: 2 },
  ]);
  expect(cellCount(runs)).toBe(5);
});
