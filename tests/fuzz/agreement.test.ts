import "../functions/custom-functions-runtime";
import { cellValueFrom, isBlank } from "../../src/measure/cell-value";
import { WORKING_CALLS, type Given } from "../functions/working-calls";
import { randomCell } from "../digests/random-call";
import { Random } from "../simulation/random";

/** Functions that are computed cell by cell or row by row; a series is looked at as a whole. */
const FUNCTIONS = WORKING_CALLS.map(([id, run, ...base]) => ({
  id,
  run,
  base: (base as Given[]).filter((given) => typeof given !== "object"),
  arguments: base.length,
})).filter(({ base, arguments: count }) => base.length === count);
const COLUMNS = 40;
const ROWS = 25;

/** The cells of a result, errors with their code and sentence. */
function shown(run: () => unknown[][]): unknown[][] {
  const plain = (cell: unknown) =>
    cell instanceof Error ? `${(cell as Error & { code: string }).code} ${cell.message}` : cell;
  try {
    return run().map((row) => row.map(plain));
  } catch (error) {
    return [[plain(error)]];
  }
}

test.each(FUNCTIONS)(
  "FRESH.$id of a column is bit for bit what it is cell by cell",
  ({ run, base }) => {
    const random = new Random(41);
    const differ: unknown[] = [];
    for (let column = 0; column < COLUMNS; column++) {
      const oddShare = random.one([0, 0.1, 0.4]);
      const columns = base.map((value) =>
        Array.from({ length: ROWS }, () => randomCell(value, random, oddShare)),
      );
      const whole = shown(() => run(...columns.map((cells) => cells.map(([cell]) => [cell]))));
      for (let row = 0; row < ROWS; row++) {
        const given = columns.map((cells) => cells[row]![0]);
        // Beside others a blank is a value that is missing; alone it is an argument left out.
        if (given.some((cell) => isBlank(cellValueFrom(cell)))) continue;
        const [alone] = shown(() => run(...given.map((cell) => [[cell]])));
        const beside = whole[row]!;
        // An error alone is the failure of the function; in a row it fills each cell. −0 is not 0.
        const expected = alone!.length === beside.length ? alone! : beside.map(() => alone![0]);
        if (!beside.every((cell, i) => Object.is(cell, expected[i])))
          differ.push({ given, beside, expected });
      }
    }
    expect(differ).toEqual([]);
  },
);
