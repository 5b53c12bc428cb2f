import { askNotePlaces, type NotePlaces } from "./note-places";
import { NotesTakenOff } from "./notes-taken-off";
import { ourFormats } from "./our-formats";
import type { SheetState } from "./sheet-state";

/** What stands of ours on a sheet, and where notes of others stand. */
export interface OurMarks {
  readonly formats: readonly Excel.ConditionalFormat[];
  /** The cells of each of these formats. */
  readonly areas: readonly Excel.RangeAreas[];
  readonly places: NotePlaces;
}

/** Finds our marks on sheets, sheet by sheet. */
export async function findOurMarks(
  context: Excel.RequestContext,
  states: readonly SheetState[],
): Promise<OurMarks[]> {
  const formats = await ourFormats(
    context,
    states.map((state) => state.formats.items),
  );
  const found = states.map((state, i) => ({
    formats: formats[i]!,
    areas: formats[i]!.map(askCells),
    places: askNotePlaces(state),
  }));
  await context.sync();
  return found;
}

function askCells(format: Excel.ConditionalFormat): Excel.RangeAreas {
  const areas = format.getRanges();
  areas.load("cellCount");
  return areas;
}

/**
 * Queues the removal of our marks, exactly those that were found, for the next sync; as far as the sheets
 * let us. What somebody has written into a note of ours stays as their note.
 *
 * @returns The notes, for the sync to be made with.
 */
export function takeOff(states: readonly SheetState[], marks: readonly OurMarks[]): NotesTakenOff {
  const notes = new NotesTakenOff();
  marks.forEach(({ formats, places }, i) => {
    const { sheet, takesFormats, takesNotes } = states[i]!;
    if (takesFormats) for (const format of formats) format.delete();
    if (takesNotes) for (const note of places.ours) notes.takeOff(sheet, note);
  });
  return notes;
}
