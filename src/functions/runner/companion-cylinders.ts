import { notAboveZero } from "../../measure/bounds";
import { isBlank, type CellValue } from "../../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../../measure/issue";
import { numberFromCell } from "../../measure/number-from-cell";
import { CellTable } from "./cell-table";

const PLACE = "cylinders";

/**
 * Reads the companion cylinders of each test: one test in a row, 2 or 3 cylinders beside each other.
 * Blank rows are skipped.
 *
 * @returns The cylinders of each test. The issue `cylinders-not-pairs-or-triples`, `cylinder-alone`,
 *   `no-cylinders`, `whole-column`, `not-above-zero`, or one of `numberFromCell`.
 */
export function companionCylinders(given: unknown): number[][] | Issue {
  const table = new CellTable(given);
  const wrong = table.tooLong();
  if (wrong) return at(PLACE, wrong);
  const { columns } = table;
  if (columns < 2 || columns > 3)
    return at(PLACE, issue("cylinders-not-pairs-or-triples", { columns }));
  const tests = table.values().map((row) => row.filter((cell) => !isBlank(cell)));
  const alone = tests.findIndex((test) => test.length === 1);
  if (alone >= 0) return at(PLACE, issue("cylinder-alone", { row: alone + 1 }));
  const made = tests.filter((test) => test.length > 0).map((test) => test.map(strength));
  if (made.length === 0) return at(PLACE, issue("no-cylinders"));
  return made.flat().find(isIssue) ?? (made as number[][]);
}

function strength(cell: CellValue): number | Issue {
  const read = at(PLACE, numberFromCell(cell))!;
  return isIssue(read) ? read : (notAboveZero(read, PLACE) ?? read);
}
