import { at, type Issue } from "../../measure/issue";
import { numberFromCell } from "../../measure/number-from-cell";
import { say } from "../../messages/catalogue";
import { orThrow, shownInCell, type CellResult } from "./cell-error";
import { CellTable } from "./cell-table";
import { seriesFrom } from "./series";
import type { Setting } from "./setting";

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
 * @param compute Gives the cells for each number of the series, blanks left out; or an issue.
 */
export function alongSeries<const S extends readonly Setting<any>[]>(
  name: string,
  settings: S,
  width: number,
  compute: (
    values: readonly number[],
    ...settings: ReadSettings<S>
  ) => readonly (readonly CellResult[])[] | Issue,
): (series: unknown, ...given: unknown[]) => any[][] {
  return (given, ...givenSettings) => {
    const series = orThrow(seriesFrom(given, name));
    const read = settings.map((setting, i) =>
      orThrow(at(setting.name, setting.read(new CellTable(givenSettings[i])))),
    ) as ReadSettings<S>;
    const places = series.cells.map((cell) => at(name, numberFromCell(cell)));
    const values = places.filter((place) => typeof place === "number");
    const computed = values.length > 0 ? orThrow(compute(values, ...read)) : [];
    let next = 0;
    return series.beside(
      places.map((place) =>
        typeof place === "number"
          ? computed[next++]!.map(shownInCell)
          : Array<unknown>(width).fill(shownInCell(place ?? "")),
      ),
    );
  };
}

/**
 * Makes a worksheet function that gives one row of cells for a whole series. Blanks are skipped; a
 * cell that cannot be read leaves the function without a result, and the sentence tells which it is.
 *
 * @param name Name of the series' argument.
 * @param compute Gives the cells, from the numbers of the series; or an issue.
 */
export function fromSeries(
  name: string,
  compute: (values: readonly number[]) => readonly CellResult[] | Issue,
): (series: unknown) => any[][] {
  return (given) => {
    const values = orThrow(seriesFrom(given, name)).cells.flatMap((cell, i) => {
      const value = orThrow(
        at(say("place-in-series", { name, cell: i + 1 }), numberFromCell(cell)),
      );
      return value === undefined ? [] : [value];
    });
    return [orThrow(compute(values)).map(shownInCell)];
  };
}
