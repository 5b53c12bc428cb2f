import { USUAL_TOLERANCE } from "../../../acceptance/spec-limits";
import { specifiedAir } from "../../../acceptance/specified-air/specified-air";
import type { CellBlock } from "../../../hosts/sheet-host";
import { aggregateSizeFromCell } from "../../../measure/aggregate-size";
import { shownValue, type CellValue } from "../../../measure/cell-value";
import { isIssue, issueSentence } from "../../../measure/issue";
import { say } from "../../../messages/pane-catalogue";
import { plainly } from "../../../reading/kept-columns";
import type { MixHeading } from "../../../reading/setup/mix-headings";
import { setupTables, type SetupTable } from "../../../reading/setup/setup-tables";
import { isEmpty, linesAdded, type NewLine } from "./setup-edits";

type Cells = readonly (readonly CellValue[])[];
type MixLine = NewLine<MixHeading>;

/** A table of specified air, and for what it is asked where a line does not say so itself. */
export interface SpecifiedFrom {
  readonly table: string;
  readonly exposure: string;
  /** As typed; "" where the table has no sizes. */
  readonly size: string;
}

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

/** Codes that ask for no less than the air of their table, and set no upper limit there. */
const LEAST_OF = new Set(["EN 206", "DIN 1045-2"]);

const AIR_LIMITS: readonly MixHeading[] = ["air target", "air tolerance", "air low", "air high"];

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

/** The columns that specified air is written into. */
function headingsOfAir(from: SpecifiedFrom | undefined): readonly MixHeading[] {
  if (!from) return [];
  return LEAST_OF.has(from.table) ? ["air low"] : ["air target", "air tolerance"];
}

/** So many sentences are shown; the others say the same of other mixes. */
const MOST_SAID = 3;

function firstOf(said: readonly string[]): readonly string[] {
  const rest = said.length - MOST_SAID;
  return rest > 0
    ? [...said.slice(0, MOST_SAID), say("pane-mixes-more-not-filled", { count: rest })]
    : said;
}

/** Specified air for a line without air limits; nothing for one that has some; else why there is none. */
function airFor(
  mix: string,
  line: MixLine,
  sizeSeen: string | undefined,
  from: SpecifiedFrom,
): MixLine | string {
  if (AIR_LIMITS.some((heading) => !isEmpty(line[heading]))) return {};
  const written = isEmpty(line.aggregateSize) ? (sizeSeen ?? from.size) : line.aggregateSize!;
  const exposure = isEmpty(line.exposure) ? from.exposure : shownValue(line.exposure);
  const size = aggregateSizeFromCell(written, "us");
  const aggregate = isIssue(size) ? aggregateSizeFromCell(written, "si") : size;
  const air = isIssue(aggregate)
    ? aggregate
    : specifiedAir({ aggregate, exposure }, from.table, "us");
  if (isIssue(air)) return say("pane-mix-not-filled", { mix, why: issueSentence(air) });
  const limits: MixLine = LEAST_OF.has(from.table)
    ? { "air low": air }
    : { "air target": air, "air tolerance": USUAL_TOLERANCE };
  const ofSize = shownValue(written) === "" ? {} : { aggregateSize: written };
  const given: MixLine = { ...limits, ...ofSize, exposure, source: sourceOf(from.table) };
  return Object.fromEntries(
    Object.entries(given).filter(([heading]) => isEmpty(line[heading as MixHeading])),
  ) as MixLine;
}

/** The table, and that the tolerance is only the usual one. */
function sourceOf(table: string): string {
  return LEAST_OF.has(table)
    ? table
    : say("setup-source-with-tolerance", { table, tolerance: USUAL_TOLERANCE });
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
