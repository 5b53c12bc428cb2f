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
  /** Whether it is a range; a single value is read once for all places. */
  readonly varies: boolean;
  readonly cell: CellValue;
  readonly value: unknown;
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
  const cells = given.map(({ cell }) => cell);
  const values = given.map(({ value }) => value);
  const resultAt = (row: number, column: number): R | Issue | undefined => {
    let blank = true;
    let missing: Given | undefined;
    for (let i = 0; i < given.length; i++) {
      const one = given[i]!;
      if (one.varies) cells[i] = one.table.cell(row, column);
      if (!isBlank(cells[i])) blank &&= !one.tells;
      else if (one.needed) missing ??= one;
    }
    if (blank) return undefined;
    if (missing) return at(missing.argument.name, issue("blank-among-others"));
    for (let i = 0; i < given.length; i++) {
      const { varies, argument } = given[i]!;
      const value = varies ? (values[i] = readArgument(argument, cells[i]!)) : values[i];
      if (isIssue(value)) return value;
    }
    return compute(...values);
  };
  const result: C[][] = [];
  for (let row = 0; row < rows; row++) {
    const line: C[] = [];
    for (let column = 0; column < columns; column++) line.push(settle(resultAt(row, column)));
    result.push(line);
  }
  return result;
}

function givenFor(argument: Argument<unknown>, table: CellTable, single: boolean): Given {
  const varies = table.isRange;
  const cell = table.cell(0, 0);
  return {
    argument,
    table,
    tells: !argument.setting && (single || varies),
    needed: varies && argument.neededInRange === true,
    varies,
    cell,
    value: readArgument(argument, cell),
  };
}
