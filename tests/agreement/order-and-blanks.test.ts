import "../functions/custom-functions-runtime";
import { check } from "../../src/functions/field-sheet";
import type { CellValue } from "../../src/measure/cell-value";
import { randomSheet, type RandomSheet } from "../digests/random-sheet";
import { Random } from "../simulation/random";

/*
 * What a sheet says of a test does not hang on where the test stands: the answers below are compared
 * with each other, none is expected of itself.
 */
const SHEETS = 300;
const numbers = Array.from({ length: SHEETS }, (_, i) => 90_000 + i);

/** State, air and specification of each row; the findings name rows, so they may differ. */
const answers = ({ headers, low, high }: RandomSheet, rows: readonly (readonly CellValue[])[]) => {
  const given = [[...headers]].concat(rows.map((row) => [...row]) as never);
  try {
    return check([given[0]!], given.slice(1), [[low]], [[high]]).map((row) => row.slice(0, 3));
  } catch (error) {
    return [[(error as Error).message.replace(/\b(?:row|cell) \S+/gi, "")]];
  }
};

/** Rows of which none is a total or said twice, and which repeat nothing from the row above. */
const plainSheets = numbers
  .map(randomSheet)
  .filter(({ tags }) => !tags.has("summary row") && !tags.has("row twice"));

test("there are enough sheets to look at", () => {
  expect(plainSheets.length).toBeGreaterThan(SHEETS / 2);
});

test("rows in another order have the same answers", () => {
  const differ = plainSheets.flatMap((sheet) => {
    const { rows } = sheet;
    const order = rows.map((_, i) => i).reverse();
    const [as, other] = [
      answers(sheet, rows),
      answers(
        sheet,
        order.map((i) => rows[i]!),
      ),
    ];
    if (as.length !== rows.length)
      return JSON.stringify(as) === JSON.stringify(other) ? [] : [sheet];
    const back = order.map((_, i) => other[order.indexOf(i)]);
    return JSON.stringify(back) === JSON.stringify(as) ? [] : [{ ...sheet, as, back }];
  });
  expect(differ).toEqual([]);
});

test("blank rows between change nothing", () => {
  const random = new Random(7);
  const differ = plainSheets.flatMap((sheet) => {
    const blank = sheet.headers.map(() => null);
    const spread = sheet.rows.flatMap((row) => (random.chance(0.5) ? [row, blank] : [row]));
    const as = answers(sheet, sheet.rows);
    const other = answers(sheet, spread);
    const told =
      other.length === spread.length ? other.filter((_, i) => spread[i] !== blank) : other;
    return JSON.stringify(told) === JSON.stringify(as) ? [] : [{ ...sheet, as, told }];
  });
  expect(differ).toEqual([]);
});
