import { isBlank, type CellValue } from "../../measure/cell-value";
import { numberFromCell } from "../../measure/number-from-cell";
import { plausible, QUANTITIES } from "../../measure/plausible";
import { Problem } from "../../measure/problem";
import type { UnitSystem } from "../../measure/unit-system";
import { tableOf } from "./argument";
import { cellErrorFor, cellOrError } from "./cell-error";
import { inArgument } from "./lift";
import { lineOfCells } from "./line-of-cells";
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
 * @throws Problem `results-not-a-series`, `specified-not-one`, `argument-missing`, `system-unknown`,
 *   and what reading the specified strength throws.
 */
export function strengthSeries(
  results: unknown,
  specified: unknown,
  unitsGiven: unknown,
): StrengthSeries {
  const unitsCell = tableOf(unitsGiven)[0]![0]!;
  const system = isBlank(unitsCell)
    ? units.otherwise!
    : inArgument("units", () => units.read(unitsCell));
  const strength = (cell: CellValue) =>
    plausible(numberFromCell(cell)!, QUANTITIES.strength, system);
  const line = lineOfCells(results, "results");
  const tests = line.cells
    .filter((cell) => !isBlank(cell))
    .map((cell) => cellOrError(() => inArgument("results", () => strength(cell))));
  return {
    tests: tests.map((test) => (typeof test === "number" ? test : undefined)),
    specified: inArgument("specified", () => strength(theOne(specified))),
    system,
    beside: (said) => {
      let test = -1;
      return line.beside(
        line.cells.map((cell) => {
          if (isBlank(cell)) return "";
          test += 1;
          return typeof tests[test] === "number" ? (said[test] ?? meanUnknown()) : tests[test];
        }),
      );
    },
  };
}

function meanUnknown(): CustomFunctions.Error {
  return cellErrorFor(new Problem("mean-takes-in-unreadable", {}, true));
}

/** The single value of an argument that may be repeated down a column. */
function theOne(given: unknown): CellValue {
  const [first, ...others] = tableOf(given)
    .flat()
    .filter((cell) => !isBlank(cell));
  if (first === undefined) throw new Problem("argument-missing");
  if (others.some((cell) => cell !== first)) throw new Problem("specified-not-one");
  return first;
}
