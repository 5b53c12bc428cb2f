import type { CellsMoved } from "../../hosts/cells-moved";
import type { SheetHost, StopListening } from "../../hosts/sheet-host";

/** Edits come in bursts; a check waits until they have rested for so long. */
const REST_MS = 250;

/**
 * Checks again soon after the last edit of a sheet.
 *
 * @param host Tells of the edits; our own marks are none.
 * @param concerns Whether an edit on a sheet concerns the checked table; it is also told of rows that
 *   were put in or taken out.
 * @param check Checks once more; returns false where it could not begin, to be asked again.
 */
export async function liveCheck(
  host: Pick<SheetHost, "onEdit">,
  concerns: (sheetId: string, moved?: CellsMoved) => boolean,
  check: () => Promise<boolean>,
): Promise<StopListening> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const soon = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void check().then((begun) => begun || soon()), REST_MS);
  };
  const stop = await host.onEdit((sheetId, moved) => {
    if (concerns(sheetId, moved)) soon();
  });
  return () => {
    clearTimeout(waiting);
    return stop();
  };
}
