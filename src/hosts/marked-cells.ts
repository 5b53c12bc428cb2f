import { WEIGHTS, type Weight } from "../fieldsheet/finding";
import { blockAddress } from "./cell-address";
import { atOnce, each, type Steps } from "./in-slices";
import type { CellPlace, Mark, ReadArea } from "./sheet-host";

/** A cell to be marked: the gravest weight of its findings, and the sentences of all of them. */
export interface MarkedCell extends CellPlace {
  readonly weight: Weight;
  readonly sentences: readonly string[];
}

/**
 * Brings the marks of one cell together, gravest first, by sheet.
 *
 * @param checked The checked tables: their sheets are there also without a mark.
 */
export function markedCellsBySheet(
  marks: readonly Mark[],
  checked: readonly ReadArea[] = [],
): Map<string, MarkedCell[]> {
  return atOnce(markedCellsInSteps(marks, checked));
}

/** The same in steps. */
export function* markedCellsInSteps(
  marks: readonly Mark[],
  checked: readonly ReadArea[] = [],
): Steps<Map<string, MarkedCell[]>> {
  const byPlace = new Map<string, Mark[]>();
  yield* each(marks, (mark) => {
    const place = `${mark.sheetId} ${mark.row} ${mark.column}`;
    const there = byPlace.get(place);
    if (there) there.push(mark);
    else byPlace.set(place, [mark]);
  });
  const bySheet = new Map<string, MarkedCell[]>(checked.map(({ area }) => [area.sheetId, []]));
  yield* each([...byPlace.values()], (ofCell) => {
    const sorted = [...ofCell].sort((a, b) => gravity(a.weight) - gravity(b.weight));
    const { sheetId, row, column, weight } = sorted[0]!;
    const cell = { sheetId, row, column, weight, sentences: sorted.flatMap((m) => m.sentences) };
    const ofSheet = bySheet.get(sheetId);
    if (ofSheet) ofSheet.push(cell);
    else bySheet.set(sheetId, [cell]);
  });
  return bySheet;
}

/**
 * The addresses of cells, cells under each other taken together as one run ("C5:C9"), joined by
 * commas into as few texts as a greatest length allows.
 *
 * @param cells The cells, of one sheet.
 * @param greatestLength Characters of the longest text.
 */
export function addressesOf(cells: readonly MarkedCell[], greatestLength: number): string[] {
  const addresses: string[] = [];
  for (const run of runsOf(cells)) {
    const last = addresses.length - 1;
    const joined = last < 0 ? "" : `${addresses[last]},${run}`;
    if (joined !== "" && joined.length <= greatestLength) addresses[last] = joined;
    else addresses.push(run);
  }
  return addresses;
}

/** Runs of cells under each other, as addresses, column by column. */
function runsOf(cells: readonly MarkedCell[]): string[] {
  const sorted = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: { row: number; column: number; rows: number; columns: number }[] = [];
  for (const { row, column } of sorted) {
    const run = runs[runs.length - 1];
    if (run && run.column === column && run.row + run.rows === row) run.rows += 1;
    else runs.push({ row, column, rows: 1, columns: 1 });
  }
  return runs.map(blockAddress);
}

function gravity(weight: Weight): number {
  return WEIGHTS.indexOf(weight);
}
