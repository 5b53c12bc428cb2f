import { aboveZero } from "../../measure/bounds";
import { isBlank } from "../../measure/cell-value";
import { numberFromCell } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { tableOf } from "./argument";
import { inArgument } from "./lift";
import { commonShape } from "./shape";

/**
 * Reads the companion cylinders of each test: one test in a row, 2 or 3 cylinders beside each other.
 * Blank rows are skipped.
 *
 * @throws Problem `cylinders-not-pairs-or-triples`, `cylinder-alone`, `no-cylinders`,
 *   `whole-column`, `not-above-zero`, and those of `numberFromCell`.
 */
export function companionCylinders(given: unknown): number[][] {
  return inArgument("cylinders", () => {
    const table = tableOf(given);
    const { columns } = commonShape([table], ["cylinders"]);
    if (columns < 2 || columns > 3)
      throw new Problem("cylinders-not-pairs-or-triples", { columns });
    const tests = table.map((row) => row.filter((cell) => !isBlank(cell)));
    const alone = tests.findIndex((test) => test.length === 1);
    if (alone >= 0) throw new Problem("cylinder-alone", { row: alone + 1 });
    const made = tests.filter((test) => test.length > 0);
    if (made.length === 0) throw new Problem("no-cylinders");
    return made.map((test) => test.map((cell) => aboveZero(numberFromCell(cell)!, "cylinder")));
  });
}
