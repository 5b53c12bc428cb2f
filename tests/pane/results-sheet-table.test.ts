import { checkTable } from "../../src/fieldsheet/check-table";
import { cautionMessages } from "../../src/messages/cautions";
import { resultsSheetTable } from "../../src/pane/results-sheet-table";
import { HEADER } from "./fake-host";

const rows = [
  ["S-01", 6, 6, 16, 1],
  ["S-02", 6, 6, 16, 3],
  [null, null, null, null, null],
  ["=1+1", 8, 8, 16, 1],
];
const table = resultsSheetTable(checkTable({ headers: HEADER, rows }, { low: 4.5, high: 7.5 }));

test("findings come first, then each test, then the cautions, in lines of one width", () => {
  expect(table[0]).toEqual(["row", "sample", "rule", "weight", "column", "value", "message"]);
  expect(table.map((line) => line.slice(0, 5))).toEqual(
    expect.arrayContaining([
      [2, "S-02", "foam-over-limit", "void", "Foam"],
      ["row", "sample", "test", "air", "specification"],
      [1, "S-01", "valid", 6, "within"],
      [2, "S-02", "void", "", ""],
      [4, "=1+1", "valid", 8, "above"],
    ]),
  );
  expect(new Set(table.map((line) => line.length)).size).toBe(1);
});

test("every caution is on the sheet", () => {
  const cells = table.flat();
  for (const caution of Object.values(cautionMessages)) expect(cells).toContain(caution);
});
