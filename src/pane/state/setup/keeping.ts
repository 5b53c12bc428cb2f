import type { SheetHost } from "../../../hosts/sheet-host";
import { say } from "../../../messages/pane-catalogue";
import { SETUP_SHEET } from "../../../reading/setup/setup-sheet-name";
import { SCALE_END } from "../../../methods/volumetric-air/meter-reading";
import { problemSentence } from "../../kit/problem-sentence";
import type { CheckedArea } from "../checked-area";
import type { PaneStore } from "../pane-state";
import type { Choices } from "./choices";
import { editsForMixes } from "./mix-edits";
import type { SpecifiedFrom } from "./specified-air-line";
import { mixesSeen } from "./mixes-seen";
import { newSetupSheet, SETUP_LOOK } from "./new-setup-sheet";
import { editsForChoices } from "./setup-edits";
import { findSetup, type SetupFound, type SetupSheet } from "./setup-sheet";
import {
  columnHeadings,
  mixHeadingsWritten,
  takenForWords,
  type MeasuredUnits,
} from "./setup-words";

/** The setup that is kept in the workbook: found with every check, written to on a click only. */
export interface SetupKeeping {
  /** Looks for the setup, and gives what is to be said of it. */
  look(): Promise<readonly string[]>;
  /** What was to be said of it when it was looked for last. */
  said(): readonly string[];
  /** Keeps what the user has said of columns. */
  keep(): Promise<string>;
  /** Adds the mixes of the checked tests, with specified air where it is asked for. */
  addMixes(from: SpecifiedFrom | undefined): Promise<string>;
}

export function setupKeeping(store: PaneStore, host: SheetHost): SetupKeeping {
  let last: SetupSheet | undefined;
  let said: readonly string[] = [];
  async function find(): Promise<SetupFound> {
    const found = await findSetup(host, last, store.get().decimal);
    // A sheet that was renamed is looked for again, one that is gone is not.
    last = found.sheet ?? (found.inTheWay ? last : undefined);
    store.set({ setup: found.sheet, setupIsOld: false });
    return found;
  }
  const look: SetupKeeping["look"] = async () => {
    const { amiss, sheet } = await find();
    const workbook = await host.datesFrom();
    store.set({ datesFrom: workbook });
    const written = sheet?.setup.datesFrom;
    const differs = workbook !== undefined && written !== undefined && workbook !== written;
    said = [
      ...(amiss ? [problemSentence(amiss)] : []),
      ...(differs ? [say("setup-days-differ", { setup: written, workbook })] : []),
    ];
    return said;
  };

  /** The sheet as it is now. @throws Problem where nothing may be written. */
  async function sheetNow() {
    const { sheet, amiss, inTheWay } = await find();
    if (amiss && inTheWay) throw amiss;
    return sheet?.read;
  }

  async function addSheet(choices: Choices, mixes: Parameters<typeof newSetupSheet>[0]["mixes"]) {
    const { checked, datesFrom } = store.get();
    const columns = [...choices.values()]
      .filter(({ field }) => field !== "as found")
      .map(({ header, field, unit }) => ({
        header,
        "taken for": takenForWords(field),
        ...(unit !== undefined && { unit }),
      }));
    const units = unitsOf(checked);
    await host.addSheet(
      SETUP_SHEET,
      newSetupSheet({ columns, mixes, units, scaleEnd: SCALE_END, datesFrom }),
      SETUP_LOOK,
    );
  }

  return {
    look,
    said: () => said,
    async keep() {
      const { choices } = store.get();
      const read = await sheetNow();
      if (!read) await addSheet(choices, []);
      else {
        const edits = editsForChoices(read.values, choices, columnHeadings());
        if (edits.length > 0) await host.writeCells(read, edits);
      }
      // What was chosen meanwhile is not kept yet.
      const now = [...store.get().choices].filter(([name, choice]) => choices.get(name) !== choice);
      store.set({ choices: new Map(now) });
      await find();
      return say("pane-setup-kept", { sheet: SETUP_SHEET, count: choices.size });
    },
    async addMixes(from) {
      const seen = mixesSeen(store.get().checked);
      if (seen.length === 0) return say("pane-no-mixes");
      const read = await sheetNow();
      const headings = mixHeadingsWritten(unitsOf(store.get().checked));
      const { blocks, lines, filled, said } = editsForMixes(
        read?.values ?? [],
        seen,
        from,
        headings,
      );
      if (!read) await addSheet(new Map(), lines);
      else if (blocks.length > 0) await host.writeCells(read, blocks);
      await find();
      const done =
        lines.length + filled > 0
          ? say("pane-mixes-added", { sheet: SETUP_SHEET, added: lines.length, filled })
          : say("pane-mixes-all-there");
      return [done, ...said].join(" ");
    },
  };
}

/** The units of what was measured, as the headers of the checked tests have them. */
function unitsOf(checked: CheckedArea | undefined): MeasuredUnits {
  const columns = checked?.result.columns ?? {};
  return {
    density: columns.density?.unit,
    slump: columns.slump?.unit,
    temperature: columns.concreteTemperature?.unit,
  };
}
