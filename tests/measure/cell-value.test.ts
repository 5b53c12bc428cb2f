import {
  cellValueFrom,
  isBlank,
  isCellError,
  shownValue,
  type CellValue,
} from "../../src/measure/cell-value";

describe("whatever a host hands over becomes a cell value", () => {
  test.each<[raw: unknown, value: CellValue]>([
    [null, null],
    [undefined, null],
    [0, 0],
    ["", ""],
    [false, false],
    ["48 oz", "48 oz"],
    ["#N/A", { error: "#N/A" }],
    ["#DIV/0!", { error: "#DIV/0!" }],
    ["#NAME?", { error: "#NAME?" }],
    ["#1", "#1"],
    ["# of cups", "# of cups"],
    [{ error: "#REF!" }, { error: "#REF!" }],
    [{ code: "#VALUE!", message: "text" }, { error: "#VALUE!" }],
    [{ type: "Error", basicValue: "#SPILL!" }, { error: "#SPILL!" }],
    [{ type: "FormattedNumber", basicValue: 5.25, numberFormat: "0.00" }, 5.25],
    [{ type: "Entity", basicValue: { basicValue: "S-1" } }, "S-1"],
    [{ type: "Empty", basicValue: "" }, ""],
    [new Error("x"), { error: "#VALUE!" }],
    [{}, "[object]"],
    [10n, "10"],
  ])("%p: %j", (raw, value) => {
    expect(cellValueFrom(raw)).toEqual(value);
  });
});

test.each<[CellValue | undefined, boolean]>([
  [null, true],
  [undefined, true],
  ["", true],
  ["   ", true],
  ["-", true],
  ["N.A.", true],
  ["none recorded", true],
  [0, false],
  [false, false],
  ["0", false],
  ["none", false],
  ["entfällt", true],
  ["no aplica", true],
  ["Not req'd", true],
  // Somebody says that he has no number: that is no blank.
  ["s/d", false],
  ["n.d.", false],
  [{ error: "#N/A" }, false],
])("%j is blank: %s", (cell, blank) => {
  expect(isBlank(cell)).toBe(blank);
});

test("only an error is an error", () => {
  expect(isCellError({ error: "#N/A" })).toBe(true);
  expect([null, "", 0, "#N/A", true].some((cell) => isCellError(cell))).toBe(false);
});

test.each<[CellValue | undefined, string]>([
  [null, ""],
  [undefined, ""],
  [5.25, "5.25"],
  [true, "true"],
  [{ error: "#N/A" }, "#N/A"],
  ["<i>", "<i>"],
])("%j is shown as %j", (cell, shown) => {
  expect(shownValue(cell)).toBe(shown);
});
