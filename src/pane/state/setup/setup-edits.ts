import type { CellBlock } from "../../../hosts/sheet-host";
import { shownValue, type CellValue } from "../../../measure/cell-value";
import { Problem } from "../../../measure/problem";
import { plainly } from "../../../reading/kept-columns";
import { partsHeaded } from "../../../reading/setup/parts";
import { setupTables, type SetupTable } from "../../../reading/setup/setup-tables";
import { takenForWords } from "./setup-words";
import type { Choices } from "./choices";

type Cells = readonly (readonly CellValue[])[];

/** A line to be added: by heading what is to stand below it. */
export type NewLine<Heading extends string> = Readonly<Partial<Record<Heading, CellValue>>>;

/**
 * What keeps choices on a setup sheet: the lines of their headers changed, and lines added for the others.
 *
 * @throws Problem `setup-sheet-no-unit` where a unit is to be kept and the table has no column for it.
 */
export function editsForChoices(cells: Cells, choices: Choices, headings: NewLine<ColumnHeading>) {
  const tables = setupTables(cells).columns;
  const edits: CellBlock[] = [];
  const found = new Set<string>();
  for (const { headings, lines } of tables) {
    const { header, unit, "taken for": takenFor } = headings.at;
    for (const row of lines) {
      const name = plainly(shownValue(cells[row]![header!]));
      const choice = choices.get(name);
      if (!choice) continue;
      found.add(name);
      edits.push({ row, column: takenFor!, values: [[takenForWords(choice.field)]] });
      if (unit !== undefined) edits.push({ row, column: unit, values: [[choice.unit ?? ""]] });
      else if (choice.unit !== undefined) throw new Problem("setup-sheet-no-unit");
    }
  }
  const added = [...choices].filter(
    ([name, { field }]) => !found.has(name) && field !== "as found",
  );
  const table = tables.at(-1);
  const lines = added.map(([, { header, field, unit }]): NewLine<ColumnHeading> => ({
    header,
    "taken for": takenForWords(field),
    ...(unit !== undefined && { unit }),
  }));
  if (table && table.headings.at.unit === undefined && lines.some(({ unit }) => unit))
    throw new Problem("setup-sheet-no-unit");
  return [...edits, ...linesAdded(cells, table, lines, headings)];
}

type ColumnHeading = "header" | "taken for" | "unit";

/**
 * Lines added below a table where there is room for them, else below all that the sheet holds, under
 * headings of their own.
 *
 * @param headings By heading how it is written, for a table that is not there yet.
 */
export function linesAdded<Heading extends string>(
  cells: Cells,
  table: SetupTable<Heading> | undefined,
  lines: readonly NewLine<Heading>[],
  headings: NewLine<Heading>,
): readonly CellBlock[] {
  if (lines.length === 0) return [];
  if (table && hasRoom(cells, table, lines.length)) {
    const [first, last] = reachOf(table);
    const places = Object.entries<number>(table.headings.at as Record<string, number>);
    const values = lines.map((line) => {
      const row = Array<CellValue>(last - first + 1).fill(null);
      for (const [heading, at] of places) row[at - first] = line[heading as Heading] ?? null;
      return row;
    });
    return [{ row: table.end, column: first, values }];
  }
  const order = Object.keys(headings) as Heading[];
  const values = [headings, ...lines].map((line) => order.map((heading) => line[heading] ?? null));
  return [{ row: cells.length === 0 ? 0 : cells.length + 1, column: 0, values }];
}

function reachOf({ headings }: SetupTable<string>): [first: number, last: number] {
  const places = Object.values<number>(headings.at as Record<string, number>);
  return [Math.min(...places), Math.max(...places)];
}

/** Whether so many lines fit below a table without touching anything, or coming under other headings. */
function hasRoom(cells: Cells, table: SetupTable<string>, lines: number): boolean {
  const [first, last] = reachOf(table);
  for (let row = table.end; row < Math.min(table.end + lines, cells.length); row++) {
    const line = cells[row]!;
    if (partsHeaded(line)) return false;
    for (let column = first; column <= last; column++) {
      if (!isEmpty(line[column])) return false;
    }
  }
  return true;
}

/** A dash says nothing to a reader, and is the user's all the same. */
export function isEmpty(cell: CellValue | undefined): boolean {
  return cell === undefined || cell === null || cell === "";
}
