import { blockAddress } from "../cell-address";
import { askNotePlaces, type NotePlaces } from "./note-places";
import { ourFormats } from "./our-formats";
import { positionOf } from "./position";
import type { SheetState } from "./sheet-state";

/** What stands on sheets of ours, and where notes of others stand. */
export interface OurMarks<Asked> {
  readonly formats: readonly Excel.ConditionalFormat[];
  /** Places of notes, sheet by sheet. */
  readonly places: readonly NotePlaces[];
  /** What else was asked, format by format. */
  readonly asked: readonly Asked[];
}

/**
 * Finds our marks on sheets.
 *
 * @param ask What else to ask of each conditional format of ours.
 */
export async function findOurMarks<Asked = never>(
  context: Excel.RequestContext,
  states: readonly SheetState[],
  ask?: (format: Excel.ConditionalFormat) => Asked,
): Promise<OurMarks<Asked>> {
  const formats = await ourFormats(context, states);
  const places = states.map(askNotePlaces);
  const asked = ask ? formats.map(ask) : [];
  await context.sync();
  return { formats, places, asked };
}

/**
 * Queues the removal of our marks, exactly those that were found, for the next sync. What somebody has
 * written into a note of ours stays as their note.
 */
export function takeOff(
  states: readonly SheetState[],
  { formats, places }: OurMarks<unknown>,
): void {
  for (const format of formats) format.delete();
  places.forEach(({ ours }, i) => {
    for (const { cell, added } of ours) {
      const note = states[i]?.notes?.getItem(blockAddress(positionOf(cell)));
      if (note && added !== "") note.content = added;
      else note?.delete();
    }
  });
}
