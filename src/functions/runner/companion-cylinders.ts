import { notAboveZero } from "../../measure/bounds";
import { isBlank, type CellValue } from "../../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../../measure/issue";
import { numberFromCell } from "../../measure/number-from-cell";
import { say } from "../../messages/catalogue";
import { CellTable } from "./cell-table";

const PLACE = "cylinders";

/** Of cylinders of one test the strongest is not so many times as strong as the weakest (our own bound). */
const MOST_APART = 2;

/**
 * Reads the companion cylinders of each test: one test in a row, 2 or 3 cylinders beside each other.
 * Blank rows are skipped.
 *
 * @returns The cylinders of each test. The issue `cylinders-not-pairs-or-triples`, `cylinder-alone`,
 *   `no-cylinders`, `whole-column`,
 *   `cylinders-not-of-one-test`, `not-above-zero`, or one of `numberFromCell`.
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
  const made: number[][] = [];
  for (const [i, test] of tests.entries()) {
    const row = i + 1;
    const strengths = test.map((cell) => at(say("cylinders-row", { row }), strength(cell)));
    const unread = strengths.find(isIssue);
    if (unread) return unread;
    const read = strengths as number[];
    const [least, most] = [Math.min(...read), Math.max(...read)];
    if (most > MOST_APART * least)
      return at(PLACE, issue("cylinders-not-of-one-test", { row, least, most }));
    if (read.length > 0) made.push(read);
  }
  return made.length > 0 ? made : at(PLACE, issue("no-cylinders"));
}

function strength(cell: CellValue): number | Issue {
  const read = numberFromCell(cell)!;
  return isIssue(read) ? read : (notAboveZero(read, "") ?? read);
}
