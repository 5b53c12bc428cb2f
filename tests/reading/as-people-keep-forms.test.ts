import { isIssue } from "../../src/measure/issue";
import type { CellValue } from "../../src/measure/cell-value";
import { FIELDS, type FieldId } from "../../src/reading/fields";
import { findTestsIn, readTestsInSteps } from "../../src/reading/read-sheet";
import { inOneGo } from "../../src/reading/steps";
import { BLIND_FORMS } from "./corpus/blind/forms";
import { FORMS_HELD_OUT } from "./corpus/forms-held-out";
import { FORMS_WORKED } from "./corpus/forms-worked";

type Rows = readonly (readonly CellValue[])[];

const SHEETS = [...FORMS_WORKED, ...FORMS_HELD_OUT, ...BLIND_FORMS.flatMap(({ forms }) => forms)]
  .flatMap(({ name, sheets }) => sheets.map(({ cells }) => ({ name, cells: cells as Rows })))
  .flatMap((sheet) => {
    const before = read(sheet.cells);
    return before ? [{ ...sheet, before }] : [];
  });

/** What is read of each test of a sheet, as text; `undefined` where no tests are found. */
function read(block: Rows): string | undefined {
  const width = Math.max(...block.map((row) => row.length));
  const whole = block.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
  const found = findTestsIn(whole);
  if (isIssue(found)) return undefined;
  const ids = Object.keys(FIELDS) as FieldId[];
  const { records } = inOneGo(readTestsInSteps(found));
  return JSON.stringify(
    records
      .filter(({ blank }) => !blank)
      .map(({ values, unreadable }) => ids.map((id) => [values[id], unreadable[id]?.id])),
  );
}

const inCells = (change: (cell: CellValue) => CellValue) => (rows: Rows) =>
  rows.map((row) => row.map(change));
const isPlain = (cell: CellValue) =>
  typeof cell === "number" && (cell === 0 || cell >= 1) && (cell < 30_000 || cell > 70_000);

/** What people do to a form without changing a value of it. */
const KEPT: Readonly<Record<string, (rows: Rows) => Rows>> = {
  "blank rows above": (rows) => [[], [], ...rows],
  "a title above": (rows) => [["Air content by the volumetric method"], ...rows],
  "blank columns at the left": (rows) => rows.map((row) => [null, null, ...row]),
  "blank columns at the right": (rows) => rows.map((row) => [...row, null, null]),
  "remarks and a signature below": (rows) => [...rows, [], ["Remarks: none"], ["Signature", ""]],
  "a page number below": (rows) => [...rows, ["Page 1 of 1"]],
  "no colons": inCells((cell) => (typeof cell === "string" ? cell.replace(/\s*:\s*$/, "") : cell)),
  "numbers kept as texts": inCells((cell) => (isPlain(cell) ? String(cell) : cell)),
  "spaces around everything": inCells((cell) => (typeof cell === "string" ? ` ${cell} ` : cell)),
};

test.each(Object.entries(KEPT))("with %s a form is read as without", (_, keep) => {
  const changed = SHEETS.filter(({ cells, before }) => read(keep(cells)) !== before);
  expect(changed.map(({ name }) => name)).toEqual([]);
});
