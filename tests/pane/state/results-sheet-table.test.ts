import { cautionMessages } from "../../../src/messages/english/cautions";
import type { CheckedArea } from "../../../src/pane/state/checked-area";
import { atOnce } from "../../../src/hosts/in-slices";
import { resultsInSteps, resultsSheetTable } from "../../../src/pane/state/results-sheet-table";
import { HEADER } from "../fake-host";
import { checkedTable } from "../../fieldsheet/checked";

const rows = [
  ["S-01", 6, 6, 16, 1],
  ["S-02", 6, 6, 16, 3],
  [null, null, null, null, null],
  ["=1+1", 8, 8, 16, 1],
];
/** The table stands below two rows of the sheet: its header is row 3, its first test row 4. */
const checked: CheckedArea = {
  table: { headers: HEADER, rows },
  headerRow: 1,
  headers: HEADER.map((header) => [String(header)]),
  read: {
    area: { sheetId: "1", sheetName: "Loads", row: 1, column: 0, rows: 6, columns: HEADER.length },
    address: "Loads!A2:E7",
    values: [["North yard", "", "", "", ""], HEADER, ...rows],
  },
  decimal: ".",
  at: new Date(0),
  result: checkedTable({ headers: HEADER, rows }, { low: 4.5, high: 7.5, headerRow: 1 }),
};
const table = resultsSheetTable(checked);

test("findings come first, then each test, then the cautions, in lines of one width", () => {
  expect(table[0]).toEqual([
    "row",
    "sample",
    "rule",
    "weight",
    "column",
    "value",
    "message",
    "cause",
  ]);
  expect(table.map((line) => line.slice(0, 5))).toEqual(
    expect.arrayContaining([
      [5, "S-02", "foam-over-limit", "void", "Foam"],
      ["row", "sample", "test", "air", "specification"],
      [4, "S-01", "valid", 6, "within"],
      [5, "S-02", "void", "", ""],
      [7, "=1+1", "valid", 8, "above"],
    ]),
  );
  expect(new Set(table.map((line) => line.length)).size).toBe(1);
});

test("every caution is on the sheet", () => {
  const cells = table.flat();
  for (const caution of Object.values(cautionMessages)) expect(cells).toContain(caution);
});

test("more findings than a sheet bears are cut off, and it is said where all of them are", () => {
  const all = checked.result.findings.length;
  expect(all).toBeGreaterThan(1);
  const { lines, cut } = atOnce(resultsInSteps(checked, 1));
  expect(cut).toEqual([
    `The list holds the first 1 of ${all} findings. The command line writes all of them (fresh-check, see the documents); or check the table in parts.`,
  ]);
  expect(lines[1]).toEqual(table[1]);
  expect(lines[2]).toEqual(["", "", "", "", "", "", cut[0], ""]);
  expect(lines.filter(([row]) => row === "row")).toHaveLength(2);
});
