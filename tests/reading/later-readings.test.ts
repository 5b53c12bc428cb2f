import { recognise } from "../../src/reading/recognise";
import type { CellValue } from "../../src/measure/cell-value";
import { checkTable } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";

const READINGS: CellValue[][] = [
  [5.5, 6.5, 5.25],
  [5.25, 6, 5.25],
  [null, 5.75, null],
];
const NAMES = ["A", "B", "C"];

function fieldsOf(headers: readonly string[]) {
  const cells = [NAMES, ...READINGS];
  const columns = headers.map((header, at) => ({ headers: [header], cells: cells[at] ?? [] }));
  return recognise(columns)
    .all.slice(1)
    .map((column) => (column.state === "read" ? column.field : column.state));
}

// How crews head the readings of C173 that come after the initial one: common practice.
test.each([
  [
    ["Load", "Initial", "Final 1", "Final 2"],
    ["first", "second", "third"],
  ],
  [
    ["Load", "Initial", "Final", "3rd"],
    ["first", "second", "third"],
  ],
  [
    ["Prueba", "Inicial", "Final", "2.ª final"],
    ["first", "second", "third"],
  ],
  [
    ["Camión", "Lect. inicial", "Lect. final 1", "Lect. final 2"],
    ["first", "second", "third"],
  ],
  [
    ["Boleta", "Inicial %", "Final %", "3.ª %"],
    ["first", "second", "third"],
  ],
  [
    ["Fahrzeug", "Anfang", "Ende 1", "Ende 2"],
    ["first", "second", "third"],
  ],
  [
    ["Prüfung", "Anfang", "Ende", "3. Wert"],
    ["first", "second", "third"],
  ],
  [
    ["Schein", "Anfang %", "Ende %"],
    ["first", "final"],
  ],
  // Of a second and a final reading each is what it says.
  [
    ["Load", "Initial", "2nd", "Final"],
    ["first", "second", "final"],
  ],
  [
    ["Load", "Initial", "Final"],
    ["first", "final"],
  ],
])("%j are %j", (headers, fields) => {
  expect(fieldsOf(headers)).toEqual(fields);
});

test("a third reading after the final one is what the air is worked out from", () => {
  const headers = ["Load", "Initial", "Final", "3rd", "Alcohol (pt)"];
  const rows = [
    ["A", 6.75, 6.25, 6, 2],
    ["B", 6.75, 6.25, 5.75, 2],
  ];
  const checked = checkTable({ headers, rows });
  if (isIssue(checked)) throw new Error(checked.id);
  const found = checked.results.map(({ state, air }) => [state, air]);
  expect(found).toEqual([
    ["valid", 6],
    ["void", undefined],
  ]);
});

test.each(["2.ª final", "Final 3", "> 6 min", "béton non brassé"])(
  "a column “%s” that is not read may decide",
  (header) => {
    const cells = header.includes("min") || header.includes("b") ? ["x", null, "x"] : READINGS[1]!;
    const columns = [
      { headers: ["Load"], cells: NAMES },
      { headers: ["1st"], cells: READINGS[0]! },
      { headers: ["2nd"], cells: READINGS[0]! },
      { headers: [header], cells },
    ];
    expect(recognise(columns).all[3]).toMatchObject({ decides: true });
  },
);
