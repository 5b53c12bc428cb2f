import { isBlank, type CellValue } from "../../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../../measure/issue";
import { readArgument, type Argument } from "./argument";
import type { CellTable, Shape } from "./cell-table";

/** One argument of a call with the table that is given for it. */
interface Given {
  readonly argument: Argument<unknown>;
  readonly table: CellTable;
  /** Whether a blank in it says that the place is blank: in no setting, and in no value that is repeated. */
  readonly tells: boolean;
  /** Whether a blank in it is a value that is missing. */
  readonly needed: boolean;
  /** A single value is read once for all places. */
  readonly once?: { readonly cell: CellValue; readonly value: unknown };
}

/**
 * Computes each place of a result by itself: a place whose measured arguments are all blank stays blank,
 * one that cannot be computed has an issue, and the others are computed all the same.
 *
 * @param compute The calculation, on the values of the arguments in their order.
 * @param settle Makes what is put there out of a result or an issue; of `undefined` for a blank place.
 */
export function placeByPlace<R, C>(
  args: readonly Argument<unknown>[],
  tables: readonly CellTable[],
  { rows, columns }: Shape,
  compute: (...values: unknown[]) => R | Issue,
  settle: (result: R | Issue | undefined) => C,
): C[][] {
  const single = rows === 1 && columns === 1;
  const given = args.map((argument, i) => givenFor(argument, tables[i]!, single));
  const cells = given.map(({ once }) => once?.cell ?? null);
  const values = given.map(({ once }) => once?.value);
  const resultAt = (row: number, column: number): R | Issue | undefined => {
    let blank = true;
    for (let i = 0; i < given.length; i++) {
      const { once, table, tells } = given[i]!;
      if (!once) cells[i] = table.cell(row, column);
      if (tells && blank) blank = isBlank(cells[i]);
    }
    if (blank) return undefined;
    const missing = given.find(({ needed }, i) => needed && isBlank(cells[i]));
    if (missing) return at(missing.argument.name, issue("blank-among-others"));
    for (let i = 0; i < given.length; i++) {
      const { once, argument } = given[i]!;
      if (!once) values[i] = readArgument(argument, cells[i]!);
      if (isIssue(values[i])) return values[i] as Issue;
    }
    return compute(...values);
  };
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => settle(resultAt(row, column))),
  );
}

function givenFor(argument: Argument<unknown>, table: CellTable, single: boolean): Given {
  const { setting, neededInRange } = argument;
  const tells = !setting && (single || table.isRange);
  if (table.isRange) return { argument, table, tells, needed: neededInRange === true };
  const cell = table.cell(0, 0);
  const once = { cell, value: readArgument(argument, cell) };
  return { argument, table, tells, needed: false, once };
}
