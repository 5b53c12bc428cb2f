import { isBlank, type CellValue } from "../../measure/cell-value";
import type { Headings } from "./line";
import type { MixHeading } from "./mix-headings";
import { setupLines } from "./setup-lines";

/** One of the tables of a setup, as it stands in the sheet. Positions from 0. */
export interface SetupTable<Heading extends string> {
  readonly headings: Headings<Heading>;
  /** Positions of the lines that hold something in its columns. */
  readonly lines: readonly number[];
  /** Where a line can be added: below the last one, or below the headings. */
  readonly end: number;
}

/** The tables of a setup; of several of one kind the lowest is the one to be added to. */
export interface SetupTables {
  readonly columns: readonly SetupTable<"header" | "taken for" | "unit">[];
  readonly mixes: readonly SetupTable<MixHeading>[];
  readonly settings: readonly SetupTable<"setting" | "value">[];
}

interface Growing {
  readonly headings: Headings<string>;
  readonly lines: number[];
  end: number;
}

/** Finds the tables of a setup, so that lines can be changed or added. */
export function setupTables(cells: readonly (readonly CellValue[])[]): SetupTables {
  const found = { columns: [], mixes: [], settings: [] } as Record<keyof SetupTables, Growing[]>;
  for (const { at, row, parts, headed } of setupLines(cells)) {
    for (const part of ["columns", "mixes", "settings"] as const) {
      const headings = parts[part];
      if (!headings) continue;
      if (headed) found[part].push({ headings, lines: [], end: at + 1 });
      else if (Object.values<number>(headings.at).some((column) => !isBlank(row[column]))) {
        const table = found[part].at(-1)!;
        table.lines.push(at);
        table.end = at + 1;
      }
    }
  }
  return found as unknown as SetupTables;
}
