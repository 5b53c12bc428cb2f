import { checkTable } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";
import { readTable } from "../../src/reading/read-table";

function namesIn(header: string | readonly string[], names: CellValue[], more: CellValue[][] = []) {
  const own = typeof header === "string" ? [header] : header;
  const headers = [...own, "1st", "2nd", "Alcohol (pt)"];
  const rows = names.map((name) => [...(Array.isArray(name) ? name : [name]), 5.5, 5.5, 2]);
  const checked = checkTable({ headers, rows: [...rows, ...more] as CellValue[][] });
  if (isIssue(checked)) throw new Error(checked.id);
  return checked.results.map(({ sample, state }) => `${sample} ${state}`.trim());
}

test.each([
  ["Location", ["Pier 1", "Pier 2"], ["Pier 1 valid", "Pier 2 valid"]],
  ["Tech", ["R. Oakes", "L. Finch"], ["R. Oakes valid", "L. Finch valid"]],
  ["Lote", ["L-31", "L-32"], ["L-31 valid", "L-32 valid"]],
  ["#", [1, 2], ["1 valid", "2 valid"]],
  // One who tested twice names no test, nor does a supplier.
  ["Tech", ["R. Oakes", "R. Oakes"], ["valid", "valid"]],
  ["Supplier", ["Alder", "Birch"], ["valid", "valid"]],
])("tests are called by “%s” where nothing else names them: %j", (header, names, expected) => {
  expect(namesIn(header, names)).toEqual(expected);
});

test("a load goes before its ticket, and both before a running number", () => {
  const tests = [
    [1, 4, 50871],
    [2, 5, 50874],
  ] as unknown as CellValue[];
  expect(namesIn(["#", "Load", "Ticket"], tests)).toEqual(["4 valid", "5 valid"]);
});

test("a title or a remark in that column is no test, and what it tells of a name is heard", () => {
  const rows = [
    ["Deck, east end", null, null, null],
    ["Piers 2 and 3 void, wrong bowl", null, null, null],
  ];
  expect(namesIn("Location", ["Pier 1", "Pier 2", "Pier 3"], rows)).toEqual([
    "Pier 1 valid",
    "Pier 2 incomplete",
    "Pier 3 incomplete",
    "",
    "",
  ]);
});

test("the column by which tests are called says why, and can be said to be none of ours", () => {
  const table = {
    headers: ["Location", "1st", "2nd"],
    rows: [
      ["Pier 1", 5, 5],
      ["Pier 2", 6, 6],
    ],
  };
  const [named] = readTable(table).recognised;
  expect(named).toMatchObject({ state: "read", field: "sample", because: { say: "read-as-name" } });
  const read = readTable(table, { kept: [{ header: "Location", field: "not ours" }] });
  expect(read.recognised[0]).toMatchObject({ state: "not ours" });
  expect(read.has("sample")).toBe(false);
});
