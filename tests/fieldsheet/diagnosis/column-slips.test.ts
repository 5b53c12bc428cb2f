import { marksOfFindings } from "../../../src/pane/state/marks-of-findings";
import { sheetFor } from "../rule-cases";
import { checkedTable } from "../checked";

const TABLE = "ASTM C173 Table 1 as reproduced in a meter maker's manual (2019)";
const forgets = {
  "First reading": 7,
  "Second reading": 7,
  "Alcohol (oz)": 64,
  "Reported air": 7,
};
const sheet = sheetFor([
  forgets,
  forgets,
  { ...forgets, "Reported air": 7.25 },
  forgets,
  forgets,
  forgets,
]);

test(`what a column does is one finding, and a row that does something else has its own (${TABLE}: 6.40, 6.50)`, () => {
  const result = checkedTable(sheet);
  expect(result.findings.map(({ record, rule, behind }) => [record, rule, behind])).toEqual([
    [null, "slip-in-column", [0, 1, 3, 4, 5]],
    [2, "reported-air-wrong", undefined],
  ]);
});

test("each row behind it has the finding, and its cell is marked", () => {
  const result = checkedTable(sheet);
  const withIt = result.results.filter(({ findings }) =>
    findings.some(({ rule }) => rule === "slip-in-column"),
  );
  expect(withIt.map(({ record }) => record)).toEqual([0, 1, 3, 4, 5]);
  const area = { sheetId: "1", sheetName: "Loads", row: 0, column: 0, rows: 7, columns: 5 };
  const marks = marksOfFindings({
    table: sheet,
    headerRow: 0,
    read: { area, address: "Loads!A1:E7", values: [sheet.headers, ...sheet.rows] },
    decimal: ".",
    result,
  } as never);
  const reported = sheet.headers.indexOf("Reported air");
  expect(
    marks.filter(({ weight }) => weight === "error").map(({ row, column }) => [row, column]),
  ).toEqual([0, 1, 2, 4, 5, 6, 3].map((row) => [row, reported]));
});
