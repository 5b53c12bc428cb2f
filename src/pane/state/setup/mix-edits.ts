import type { CellBlock } from "../../../hosts/sheet-host";
import { shownValue, type CellValue } from "../../../measure/cell-value";
import { say } from "../../../messages/pane-catalogue";
import { plainly } from "../../../reading/kept-columns";
import type { MixHeading } from "../../../reading/setup/mix-headings";
import { setupTables, type SetupTable } from "../../../reading/setup/setup-tables";
import { linesAdded } from "./setup-edits";
import { airFor, headingsOfAir, type MixLine, type SpecifiedFrom } from "./specified-air-line";

type Cells = readonly (readonly CellValue[])[];

/** A mix of the checked tests. */
export interface MixSeen {
  readonly mix: string;
  /** Aggregate size, where all its tests say the same. */
  readonly size?: string;
}

/** What is to be written, and what there is to say of it. */
export interface MixEdits {
  readonly blocks: readonly CellBlock[];
  /** Lines for mixes that the setup does not name yet. */
  readonly lines: readonly MixLine[];
  readonly filled: number;
  readonly said: readonly string[];
}

/**
 * Lines for the mixes that a setup does not name, and specified air for every line without air limits,
 * where that is asked for. Cells that hold something stay as they are.
 */
export function editsForMixes(
  cells: Cells,
  seen: readonly MixSeen[],
  from: SpecifiedFrom | undefined,
  headings: MixLine,
): MixEdits {
  const tables = setupTables(cells).mixes;
  const said: string[] = [];
  const named = new Set<string>();
  const sizes = new Map(seen.map(({ mix, size }) => [plainly(mix), size] as const));
  const blocks: CellBlock[] = [];
  let filled = 0;
  const takesAir = (table: SetupTable<MixHeading> | undefined) =>
    !table || headingsOfAir(from).every((heading) => heading in table.headings.at);
  if (!tables.every(takesAir)) said.push(say("pane-mixes-no-columns"));
  for (const table of tables) {
    const lines = new Map<number, MixLine>();
    for (const row of table.lines) {
      const line = lineAt(cells, table, row);
      const mix = shownValue(line.mix).trim();
      named.add(plainly(mix));
      const more =
        from && mix !== "" && takesAir(table)
          ? airFor(mix, line, sizes.get(plainly(mix)), from)
          : {};
      if (typeof more === "string") said.push(more);
      else if (Object.keys(more).length > 0) lines.set(row, more);
    }
    filled += lines.size;
    const block = blockOf(table, lines);
    if (block) blocks.push(block);
  }
  const added = seen
    .filter(({ mix }) => !named.has(plainly(mix)))
    .map(({ mix, size }) => {
      const line: MixLine = { mix, ...(size !== undefined && { aggregateSize: size }) };
      const more = from && takesAir(tables.at(-1)) ? airFor(mix, line, size, from) : {};
      if (typeof more === "string") said.push(more);
      else if (Object.keys(more).length > 0) filled++;
      return typeof more === "string" ? line : { ...line, ...more };
    });
  const below = linesAdded(cells, tables.at(-1), added, headings);
  return { blocks: [...blocks, ...below], lines: added, filled, said: firstOf(said) };
}

/** So many sentences are shown; the others say the same of other mixes. */
const MOST_SAID = 3;

function firstOf(said: readonly string[]): readonly string[] {
  const rest = said.length - MOST_SAID;
  return rest > 0
    ? [...said.slice(0, MOST_SAID), say("pane-mixes-more-not-filled", { count: rest })]
    : said;
}

function lineAt(cells: Cells, { headings }: SetupTable<MixHeading>, row: number): MixLine {
  const places = Object.entries(headings.at) as [MixHeading, number][];
  return Object.fromEntries(
    places.map(([heading, at]) => [heading, cells[row]?.[at] ?? null]),
  ) as MixLine;
}

/** The cells of some lines of a table as one block. */
function blockOf(
  { headings }: SetupTable<MixHeading>,
  lines: ReadonlyMap<number, MixLine>,
): CellBlock | undefined {
  if (lines.size === 0) return undefined;
  const rows = [...lines.keys()];
  const places = Object.entries(headings.at) as [MixHeading, number][];
  const first = Math.min(...places.map(([, at]) => at));
  const last = Math.max(...places.map(([, at]) => at));
  const top = rows.reduce((least, row) => Math.min(least, row), Infinity);
  const bottom = rows.reduce((most, row) => Math.max(most, row), 0);
  const values = Array.from({ length: bottom - top + 1 }, (_, i) => {
    const line = Array<CellValue>(last - first + 1).fill(null);
    for (const [heading, at] of places) line[at - first] = lines.get(top + i)?.[heading] ?? null;
    return line;
  });
  return { row: top, column: first, values };
}
