import type { CellValue } from "../../src/measure/cell-value";
import { anyFromCell, faultFromCell } from "../../src/measure/fault-from-cell";
import { textFromCell, yesOrNoFromCell } from "../../src/measure/words-from-cell";

test.each<[CellValue, string | undefined]>([
  [" S-1 ", "S-1"],
  [17, "17"],
  [true, "true"],
  ["<b>S</b>", "<b>S</b>"],
  ["", undefined],
  ["n/a", undefined],
  [null, undefined],
])("the text of %j is %j", (cell, text) => {
  expect(textFromCell(cell)).toBe(text);
});

test.each<[CellValue, boolean | undefined]>([
  ["yes", true],
  [" Y ", true],
  ["X", true],
  ["✓", true],
  [true, true],
  [1, true],
  ["no", false],
  ["None", false],
  [false, false],
  [0, false],
  [null, undefined],
  ["-", undefined],
])("%j ticks %s", (cell, ticked) => {
  expect(yesOrNoFromCell(cell)).toBe(ticked);
});

test.each<[CellValue, boolean | undefined]>([
  ["yes", true],
  ["no", false],
  [8, true],
  [0, false],
  ["8 oz", true],
  ["0 oz", false],
  ["1/2 pt", true],
  ["none", false],
  [null, undefined],
])("%j says that there was any: %s", (cell, any) => {
  expect(anyFromCell(cell)).toBe(any);
});

test("with a decimal comma where the workbook writes it", () => {
  expect(anyFromCell("0,5 L", {}, ",")).toBe(true);
});

test.each<[CellValue, string]>([
  ["maybe", "not-yes-or-no"],
  [2, "not-yes-or-no"],
  [{ error: "#REF!" }, "cell-error"],
])("%j is neither: %s", (cell, id) => {
  expect(yesOrNoFromCell(cell)).toMatchObject({ id });
});

test.each<[CellValue, string]>([
  ["after rolling", "not-yes-or-no"],
  ["1,250 mL", "comma-is-unclear"],
  [{ error: "#REF!" }, "cell-error"],
])("%j says nothing of the kind: %s", (cell, id) => {
  expect(anyFromCell(cell)).toMatchObject({ id });
});

test.each<[CellValue, { opposite?: boolean; header?: string }, boolean | string]>([
  ["yes", {}, true],
  ["no", {}, false],
  ["yes", { opposite: true }, false],
  ["no", { opposite: true }, true],
  ["ok", {}, false],
  ["ok", { opposite: true }, false],
  ["FAIL", {}, true],
  ["fail", { opposite: true }, true],
  ["✓", { opposite: true }, false],
  ["✓", {}, "tick-is-unclear"],
  ["x", { opposite: true }, "tick-is-unclear"],
  ["none", { opposite: true }, "not-yes-or-no"],
  ["yes", { header: "Leak check" }, "found-or-tested"],
  ["yes", { header: "Leak during test" }, true],
])("whether %j, asked as %j, is a fault: %s (by what the words say)", (cell, asked, found) => {
  const read = faultFromCell(cell, asked);
  expect(typeof found === "string" ? read : { id: read }).toMatchObject({ id: found });
});
