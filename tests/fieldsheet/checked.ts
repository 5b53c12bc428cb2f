import type { CheckResult } from "../../src/fieldsheet/check-result";
import { checkBlock, checkTable } from "../../src/fieldsheet/check-table";
import { Problem } from "../../src/measure/problem";

/** The check of a table that can be checked; anything else fails the test that asks for it. */
export function checkedTable(...given: Parameters<typeof checkTable>): CheckResult {
  return Problem.unless(checkTable(...given));
}

/** The same of a block of cells. */
export function checkedBlock(...given: Parameters<typeof checkBlock>): CheckResult {
  return Problem.unless(checkBlock(...given));
}
