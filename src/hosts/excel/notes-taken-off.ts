import { blockAddress } from "../cell-address";
import { readNote } from "../our-note";
import type { OurNote } from "./note-places";
import { positionOf } from "./position";

/** A note that is taken off with the next sync, or of which somebody's own lines are left. */
interface Leaving {
  readonly sheet: Excel.Worksheet;
  readonly address: string;
  readonly note: Excel.Note;
  /** What it held when it was looked at. */
  readonly seen: string;
  readonly rest: string;
}

/**
 * Notes of ours that are taken off. Excel cannot be told to take a note off only if it still holds what we
 * saw in it. So each is read once more in the very request that takes it off, just before; where something
 * else stood there by then, that is put back.
 */
export class NotesTakenOff {
  private readonly leaving: Leaving[] = [];

  /** Queues one for the next sync. */
  takeOff(sheet: Excel.Worksheet, { cell, content, rest }: OurNote): void {
    const address = blockAddress(positionOf(cell));
    const note = sheet.notes.getItem(address);
    note.load("content");
    if (rest === "") note.delete();
    // Queued behind the load; what is loaded is what stood there before.
    // eslint-disable-next-line office-addins/call-sync-after-load
    else note.content = rest;
    this.leaving.push({ sheet, address, note, seen: content, rest });
  }

  /**
   * Makes the sync, and puts back what had been changed meanwhile.
   *
   * @throws NotesChanged where something had to be put back: our notes stand elsewhere by now.
   */
  async sync(context: Excel.RequestContext): Promise<void> {
    let failure: unknown;
    try {
      await context.sync();
    } catch (error) {
      failure = error;
    }
    const wrong = this.leaving.flatMap((one) => {
      const stood = stoodIn(one.note);
      return stood === undefined || stood === one.seen ? [] : [{ ...one, stood }];
    });
    if (wrong.length > 0) {
      await putBack(context, wrong);
      failure ??= new NotesChanged();
    }
    if (failure !== undefined) throw failure;
  }
}

/** Notes were changed while ours were taken off. Whoever began has to look at them anew. */
export class NotesChanged extends Error {
  readonly code = "Conflict";
}

/** What a note held just before it was taken off; `undefined` where the request did not come to it. */
function stoodIn(note: Excel.Note): string | undefined {
  try {
    return note.content;
  } catch {
    return undefined;
  }
}

async function putBack(
  context: Excel.RequestContext,
  notes: readonly (Leaving & { readonly stood: string })[],
): Promise<void> {
  const now = notes.map(({ sheet, address }) => {
    const note = sheet.notes.getItemOrNullObject(address);
    note.load("content");
    return note;
  });
  await context.sync();
  notes.forEach(({ sheet, address, rest, stood }, i) => {
    const note = now[i]!;
    if (note.isNullObject) sheet.notes.add(address, stood);
    // One that somebody has written since stays; not what we have put or left there ourselves.
    else if (note.content === rest || readNote(note.content).whose === "ours") note.content = stood;
  });
  await context.sync();
}
