import type { CellValue } from "../../measure/cell-value";
import { numberFromCell } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/catalogue";
import { tableOf } from "./argument";
import { cellErrorFor } from "./cell-error";
import { inArgument, orThrow, type CellResult } from "./lift";
import type { Setting } from "./setting";
import { commonShape } from "./shape";

type ReadSettings<S extends readonly Setting<unknown>[]> = {
  [I in keyof S]: S[I] extends Setting<infer T> ? T : never;
};

/**
 * Makes a worksheet function that looks at one series as a whole and answers for each of its cells.
 *
 * The series is a column, or a row; then the answer lies on its side too. Blanks are skipped but keep
 * their place. A cell that cannot be read shows why in its own place and is skipped as well.
 *
 * @param name Name of the series' argument.
 * @param settings The arguments after it.
 * @param width How many cells each place of the result has.
 * @param compute Gives the cells for each number of the series, blanks left out.
 */
export function alongSeries<const S extends readonly Setting<any>[]>(
  name: string,
  settings: S,
  width: number,
  compute: (
    values: readonly number[],
    ...settings: ReadSettings<S>
  ) => readonly (readonly CellResult[])[],
): (series: unknown, ...given: unknown[]) => any[][] {
  return (series, ...given) =>
    orThrow(() => {
      const { places, across } = seriesFrom(series, name);
      const values = places.filter((place) => typeof place === "number");
      const read = settings.map((setting, i) =>
        inArgument(setting.name, () => setting.read(tableOf(given[i]))),
      ) as ReadSettings<S>;
      const computed = values.length > 0 ? compute(values, ...read) : [];
      let next = 0;
      const rows = places.map((place): readonly unknown[] => {
        if (typeof place === "number") return computed[next++]!;
        return Array<unknown>(width).fill(place ? cellErrorFor(place, name) : "");
      });
      return across
        ? rows[0]!.map((_, i) => rows.map((row) => row[i]))
        : rows.map((row) => [...row]);
    });
}

/**
 * Makes a worksheet function that gives one row of cells for a whole series. Blanks are skipped; a
 * cell that cannot be read leaves the function without a result, and the sentence tells which it is.
 *
 * @param name Name of the series' argument.
 * @param compute Gives the cells, from the numbers of the series.
 */
export function fromSeries(
  name: string,
  compute: (values: readonly number[]) => readonly CellResult[],
): (series: unknown) => any[][] {
  return (series) =>
    orThrow(() => {
      const values = seriesFrom(series, name).places.flatMap((place, i) => {
        if (place instanceof Problem) {
          throw cellErrorFor(place, say("place-in-series", { name, cell: i + 1 }));
        }
        return place === undefined ? [] : [place];
      });
      return [[...compute(values)]];
    });
}

/** The cells of a series: a number, a blank, or why it cannot be read. */
interface Series {
  readonly places: readonly (number | undefined | Problem)[];
  readonly across: boolean;
}

function seriesFrom(given: unknown, name: string): Series {
  const table = tableOf(given);
  const { rows, columns } = commonShape([table], [name]);
  if (rows > 1 && columns > 1) {
    throw new Problem("one-series-needed", { where: name, rows, columns });
  }
  return { places: table.flat().map(numberOrProblem), across: columns > 1 };
}

function numberOrProblem(cell: CellValue): number | undefined | Problem {
  try {
    return numberFromCell(cell);
  } catch (problem) {
    if (problem instanceof Problem) return problem;
    throw problem;
  }
}
