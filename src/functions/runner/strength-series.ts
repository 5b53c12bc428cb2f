import { cellErrorIssue } from "../../measure/cell-error-issue";
import { isBlank, isCellError, type CellValue } from "../../measure/cell-value";
import { at, isIssue, issue, unavailable, type Issue } from "../../measure/issue";
import { numberFromCell } from "../../measure/number-from-cell";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";
import { readArgument } from "./argument";
import { shownInCell } from "./cell-error";
import { CellTable } from "./cell-table";
import { seriesFrom } from "./series";
import { units } from "./units-argument";

/** Strength tests as they stand in a sheet. */
export interface StrengthSeries {
  /** The tests that were made; `undefined` for a cell that cannot be read. Blank cells are no tests. */
  readonly tests: readonly (number | undefined)[];
  readonly specified: number;
  readonly system: UnitSystem;
  /** Lays what is said of each test beside its cell: a blank beside a blank, an error beside an error. */
  readonly beside: (said: readonly (string | undefined)[]) => unknown[][];
}

/**
 * Reads a column or row of strength tests with the strength specified for them.
 *
 * @returns The tests. The issue `one-series-needed`, `specified-not-one`, `argument-missing`,
 *   `system-unknown`, or one of reading the specified strength.
 */
export function strengthSeries(
  results: unknown,
  specifiedGiven: unknown,
  unitsGiven: unknown,
): StrengthSeries | Issue {
  const series = seriesFrom(results, "results");
  if (isIssue(series)) return series;
  const system = at("units", systemFrom(new CellTable(unitsGiven)));
  if (isIssue(system)) return system;
  const specified = at("specified", specifiedFrom(new CellTable(specifiedGiven), system));
  if (isIssue(specified)) return specified;
  const read = series.cells.map((cell) => at("results", strength(cell, system)));
  const made = read.filter((result) => result !== undefined);
  return {
    tests: made.map((test) => (isIssue(test) ? undefined : test)),
    specified,
    system,
    beside: (said) => {
      let next = 0;
      return series.beside(
        read.map((result) => {
          if (result === undefined) return [""];
          const verdict = said[next++] ?? unavailable("mean-takes-in-unreadable");
          return [shownInCell(isIssue(result) ? result : verdict)];
        }),
      );
    },
  };
}

function strength(cell: CellValue, system: UnitSystem): number | undefined | Issue {
  const read = numberFromCell(cell);
  if (read === undefined || isIssue(read)) return read;
  return implausible(read, QUANTITIES.strength, system) ?? read;
}

function systemFrom(table: CellTable): UnitSystem | Issue {
  const given = differentCells(table);
  if (isIssue(given)) return given;
  if (given.length > 1) return issue("one-value-needed", { cells: table.rows * table.columns });
  return readArgument(units, given[0] ?? null)!;
}

function specifiedFrom(table: CellTable, system: UnitSystem): number | Issue {
  const given = differentCells(table);
  if (isIssue(given)) return given;
  if (given.length > 1) return issue("specified-not-one");
  return strength(given[0] ?? null, system) ?? issue("argument-missing");
}

/** The values of an argument that may be repeated down a column, each once; an issue where one is an error. */
function differentCells(table: CellTable): readonly CellValue[] | Issue {
  const wrong = table.tooLong();
  if (wrong) return wrong;
  const cells = table.values().flat();
  const error = cells.find(isCellError);
  return error ? cellErrorIssue(error) : [...new Set(cells.filter((cell) => !isBlank(cell)))];
}
