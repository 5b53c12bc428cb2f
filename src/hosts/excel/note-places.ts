import type { Block } from "../cell-address";
import type { MarkedCell } from "../marked-cells";
import { readNote } from "../our-note";
import { askPosition, positionOf } from "./position";
import type { SheetState } from "./sheet-state";

/** A note that holds lines of ours, whole and unchanged. */
export interface OurNote {
  readonly cell: Excel.Range;
  /** All that it held when it was looked at. */
  readonly content: string;
  /** What somebody has written into it besides; "" where it is ours alone. */
  readonly rest: string;
}

/** Where notes stand on a sheet, and where others keep ours away. */
export interface NotePlaces {
  readonly ours: readonly OurNote[];
  /** Cells whose note began as ours and was changed since. */
  readonly changed: readonly Excel.Range[];
  /** Cells with a note or a comment of somebody else. */
  readonly theirs: readonly Excel.Range[];
  readonly merged: Excel.RangeCollection | undefined;
}

/**
 * Asks where the notes of sheets stand. Their places are known after the next sync.
 *
 * Notes are taken off by the address of their cell, not by their place in the list: that place shifts
 * as soon as one of them goes, and then it is somebody else's note that is taken off.
 */
export function askNotePlaces(state: SheetState): NotePlaces {
  const ours: OurNote[] = [];
  const changed: Excel.Range[] = [];
  const theirs = (state.comments?.items ?? []).map(locationOf);
  for (const note of state.notes?.items ?? []) {
    const { content } = note;
    const read = readNote(content);
    const cell = locationOf(note);
    if (read.whose === "theirs") theirs.push(cell);
    else if (read.whose === "changed") changed.push(cell);
    else ours.push({ cell, content, rest: read.whose === "shared" ? read.rest : "" });
  }
  const merged = state.merged && !state.merged.isNullObject ? state.merged.areas : undefined;
  merged?.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount");
  return { ours, changed, theirs, merged };
}

/** A cell that gets a note, with its sentences. */
export interface NotedCell {
  readonly row: number;
  readonly column: number;
  readonly sentences: readonly string[];
}

/** Gathers the sentences by the cell that can carry the note: of merged cells it is the first. */
export function notedCells(cells: readonly MarkedCell[], places: NotePlaces): NotedCell[] {
  const merged = places.merged?.items.map(positionOf) ?? [];
  const noted = new Map<string, NotedCell>();
  for (const { row, column, sentences } of cells) {
    if (sentences.length === 0) continue;
    const first = merged.find((block) => holds(block, row, column)) ?? { row, column };
    const key = placeKey(first);
    const before = noted.get(key)?.sentences ?? [];
    noted.set(key, { row: first.row, column: first.column, sentences: [...before, ...sentences] });
  }
  return [...noted.values()];
}

/** The cells whose note or comment is not ours, or not ours alone. */
export function takenPlaces({ theirs, changed, ours }: NotePlaces): ReadonlySet<string> {
  const shared = ours.filter(({ rest }) => rest !== "").map(({ cell }) => cell);
  return new Set([...theirs, ...changed, ...shared].map((cell) => placeKey(positionOf(cell))));
}

/** A cell as a key. */
export function placeKey({ row, column }: { row: number; column: number }): string {
  return `${row} ${column}`;
}

function locationOf(note: Excel.Note | Excel.Comment): Excel.Range {
  const cell = note.getLocation();
  askPosition(cell);
  return cell;
}

function holds(block: Block, row: number, column: number): boolean {
  const down = row - block.row;
  const right = column - block.column;
  return down >= 0 && down < block.rows && right >= 0 && right < block.columns;
}
