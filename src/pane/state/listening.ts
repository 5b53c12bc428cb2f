import { EVERY_SIDE } from "../../hosts/area-around";
import { areaAfter, type CellsMoved } from "../../hosts/cells-moved";
import type { CellPlace, SheetHost, StopListening } from "../../hosts/sheet-host";
import { sameRead } from "../../hosts/trimmed";
import { say } from "../../messages/pane-catalogue";
import { rowAt, type CheckedArea } from "./checked-area";
import type { PaneCommands } from "./commands";
import { liveCheck } from "./live-check";
import type { PaneStore } from "./pane-state";
import { problemSentence } from "../kit/problem-sentence";

/** Turns listening to the spreadsheet on and off. Requests may come faster than they are served. */
function listening(store: PaneStore, begin: () => Promise<StopListening>): (on: boolean) => void {
  let last: Promise<StopListening | undefined> = Promise.resolve(undefined);
  return (on) => {
    last = last.then(async (stop) => {
      try {
        await stop?.();
        return on ? await begin() : undefined;
      } catch (error) {
        store.set({ error: problemSentence(error) });
        return undefined;
      }
    });
  };
}

/** Follows the selected cell while it is asked to. */
export function cursorFollower(store: PaneStore, host: SheetHost): (on: boolean) => void {
  return listening(store, async () => {
    let last: CellPlace | undefined;
    const moveTo = async (cursor: CellPlace): Promise<void> => {
      last = cursor;
      const changed = await hasChanged(store, host, cursor);
      if (last !== cursor) return;
      if (changed) store.set({ status: say("pane-row-changed", { row: cursor.row + 1 }) });
      store.set({ cursor: changed ? undefined : cursor });
    };
    const stop = await host.onSelectionChange((cursor) => void moveTo(cursor));
    // Where the cursor is now is not told; a selection that cannot be read has none.
    await host.read("selection").then(
      ({ area }) => moveTo(area),
      () => {},
    );
    return stop;
  });
}

/**
 * Whether a row of the checked table holds something else by now than was checked, so that what is known
 * of it is of another test. The live check sees to that itself.
 */
async function hasChanged(store: PaneStore, host: SheetHost, cursor: CellPlace): Promise<boolean> {
  const { checked, live } = store.get();
  if (!checked || live || !rowAt(checked, cursor)) return false;
  const { area, values } = checked.read;
  const row = {
    ...checked.read,
    ...{ area: { ...area, row: cursor.row, rows: 1 }, values: [values[cursor.row - area.row]!] },
    cut: EVERY_SIDE,
  };
  return host.readAgain(row).then(
    (now) => !sameRead(now, row),
    () => true,
  );
}

/** The checked table where it lies after rows were put in or taken out, until it is checked again. */
function movedBy(checked: CheckedArea, moved: CellsMoved): CheckedArea {
  const { read } = checked;
  return { ...checked, read: { ...read, area: areaAfter(read.area, moved) } };
}

/** Checks again after edits while the live check is on. */
export function followEdits(store: PaneStore, host: SheetHost, commands: PaneCommands): void {
  const follow = listening(store, () =>
    liveCheck(
      host,
      (sheetId, moved) => {
        const { checked, setup } = store.get();
        if (setup?.read.area.sheetId === sheetId) {
          store.set({ setupIsOld: true });
          return checked !== undefined;
        }
        if (checked?.read.area.sheetId !== sheetId) return false;
        if (moved) store.set({ checked: movedBy(checked, moved) });
        return true;
      },
      commands.checkAgain,
    ),
  );
  let following = false;
  store.watch(
    ({ live }) => live,
    (live) => {
      if (live !== following) follow(live);
      following = live;
    },
  );
}
