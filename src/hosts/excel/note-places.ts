import type { Block } from "../cell-address";
import type { MarkedCell } from "../marked-cells";
import { addedToOurNote, isOurNote } from "../mark-tag";
import { askPosition, positionOf } from "./position";
import type { SheetState } from "./sheet-state";

/** A note of ours, its cell, and what somebody has written behind our sentences. */
export interface OurNote {
  readonly cell: Excel.Range;
  readonly added: string;
}

/** Where notes stand on a sheet, and where others keep ours away. */
export interface NotePlaces {
  readonly ours: readonly OurNote[];
  /** Cells with a note or a comment of somebody else. */
  readonly taken: readonly Excel.Range[];
  readonly merged: Excel.RangeCollection | undefined;
}

/**
 * Asks where the notes of sheets stand. Their places are known after the next sync.
 *
 * Notes are taken off by the address of their cell, not by their place in the list: that place shifts
 * as soon as one of them goes, and then it is somebody else's note that is taken off.
 */
export function askNotePlaces(state: SheetState): NotePlaces {
  const notes = state.takesNotes ? (state.notes?.items ?? []) : [];
  const comments = state.comments?.items ?? [];
  const ours = notes
    .filter(({ content }) => isOurNote(content))
    .map((note) => ({ cell: locationOf(note), added: addedToOurNote(note.content) }));
  const others = [...notes.filter(({ content }) => !isOurNote(content)), ...comments];
  const merged = state.merged && !state.merged.isNullObject ? state.merged.areas : undefined;
  merged?.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount");
  return { ours, taken: others.map(locationOf), merged };
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
export function takenPlaces({ taken, ours }: NotePlaces): ReadonlySet<string> {
  const shared = ours.filter(({ added }) => added !== "").map(({ cell }) => cell);
  return new Set([...taken, ...shared].map((cell) => placeKey(positionOf(cell))));
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
