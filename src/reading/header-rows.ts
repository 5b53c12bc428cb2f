import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { endsWithColon, isLabelText } from "./labels";
import { recognise } from "./recognise";

/**
 * The headers of each column from its header rows: titles of groups from the top down, the column's own
 * header last. A title stands also over the blank cells to its right, up to the next title of its row or
 * of a row above, as merged cells do.
 *
 * @param rows The header rows from the top down, all as wide as the first.
 */
export function headersByColumn(
  rows: readonly (readonly CellValue[])[],
): readonly (readonly string[])[] {
  const titles: string[][] = [];
  for (const [level, row] of rows.entries()) {
    const written = (rows[0] ?? []).map((_, at) => shownValue(row[at]).trim());
    if (level < rows.length - 1) {
      for (let at = 1; at < written.length; at++) {
        const underOneTitle = titles.every((above) => above[at] === above[at - 1]);
        if (written[at] === "" && underOneTitle) written[at] = written[at - 1]!;
      }
    }
    titles.push(written);
  }
  return (rows[0] ?? []).map((_, at) => titles.map((row) => row[at]!));
}

/** A measured value as a text; "2" may be the header of a second reading. */
const MEASURED = /^\s*-?\d+[.,]\d+\s*%?\s*$/;

/** Whether a row may be one of several header rows: texts, and nothing but texts that are no values. */
export function mayBeOneOfSeveral(row: readonly CellValue[]): boolean {
  const texts = row.every(
    (cell) => cell === null || (typeof cell === "string" && !MEASURED.test(cell)),
  );
  return texts && row.some((cell) => shownValue(cell).trim() !== "");
}

/** Whether a row may stand above headers as their titles: no labels with their values, "Date: 3/14/2026". */
export function mayBeTitles(row: readonly CellValue[]): boolean {
  return row.every((cell) => isBlank(cell) || (isLabelText(cell) && !endsWithColon(cell)));
}

/** Header rows as one: each header behind its titles, as far as it says the same alone with them. */
export function inOneRow(headers: readonly (readonly string[])[]): readonly string[] {
  const whole = recognise(headers.map((each) => ({ headers: each, cells: [] })));
  return headers.map((each, index) => {
    const written = each.filter((header, level) => header !== "" && header !== each[level - 1]);
    const joined = written.join(" ");
    const found = whole.all[index]!;
    if (written.length < 2 || found.state !== "read") return joined;
    const alone = recognise([{ headers: [joined], cells: [] }]).all[0]!;
    const same = alone.state === "read" && alone.field === found.field;
    return same ? joined : written.at(-1)!;
  });
}
