import type { FUniver } from "@univerjs/core/facade";
import { Problem } from "../../measure/problem";
import type { Pause } from "../in-slices";
import type { SheetHost } from "../sheet-host";
import { addLinesBelow, readNamedSheet } from "./lines-below";
import { insertFormula } from "./insert-formula";
import { listenToEdits, listenToSelection } from "./listening";
import { putMarks, takeAllMarksOff } from "./marks";
import { readAgain, readScope, readSheetTops, valuesOf } from "./reading";
import { writeCellsOf } from "./kept-sheet";
import { addSheetNamed, writeResults } from "./results-sheet";
import { KeptSettings } from "./settings";
import { openWorkbook, sheetWithId } from "./workbook";

/** The port for the workbench, which can also be left when another workbook is opened. */
export interface WorkbenchHost extends SheetHost {
  /** Stops whatever still listens. */
  stopListening(): void;
}

/** The port for the spreadsheet of the workbench. */
export function workbenchHost(api: FUniver): WorkbenchHost {
  const settings = new KeptSettings(openWorkbook(api).getName());
  const listening = new Set<() => void>();
  const kept = (stop: () => void) => {
    const stopOnce = () => {
      if (listening.delete(stopOnce)) stop();
    };
    listening.add(stopOnce);
    return stopOnce;
  };
  return {
    decimalMark: () => answer(() => "."),
    // The numbers of days in a file that counts from 1904 are counted anew when it is opened.
    datesFrom: () => answer(() => 1900),
    read: (scope, progress, around) =>
      untilCalledOff(progress, (tell) => readScope(api, scope, tell, around)),
    sheetTops: (rows) => answer(() => readSheetTops(api, rows)),
    readAgain: (before, progress) =>
      untilCalledOff(progress, (tell) => readAgain(api, before, tell)),
    select: ({ sheetId, row, column }, along) =>
      answer(() => {
        const sheet = sheetWithId(api, sheetId);
        openWorkbook(api).setActiveSheet(sheet);
        sheet.getRange(row, column).activate();
        sheet.scrollToCell(Math.max(0, row - 3), Math.max(0, column - 3));
        return along ? valuesOf(sheet, along) : [];
      }),
    mark: (marks, withNotes, checked = [], pause) =>
      untilStopped(pause, (tell) => putMarks(api, marks, withNotes, checked, tell)),
    unmark: (pause) => untilStopped(pause, (tell) => takeAllMarksOff(api, tell)),
    readSheet: (name) => answer(() => readNamedSheet(api, name)),
    addLines: (name, lines) => answer(() => addLinesBelow(api, name, lines)),
    showsPictures: false,
    writeResultsSheet: (name, table, look, pause) =>
      untilStopped(pause, (tell) => writeResults(api, name, table, look, tell)),
    insertFormula: (formula) => answer(() => insertFormula(api, formula)),
    workbookName: () => answer(() => openWorkbook(api).getName()),
    addSheet: (name, table, look) => answer(() => addSheetNamed(api, name, table, look)),
    writeCells: (read, blocks) => answer(() => writeCellsOf(api, read, blocks)),
    settings: () => answer(() => settings.read()),
    saveSettings: (kept) => answer(() => settings.keep(kept)),
    onSelectionChange: (listener) => answer(() => kept(listenToSelection(api, listener))),
    onEdit: (listener) => answer(() => kept(listenToEdits(api, listener))),
    stopListening: () => [...listening].forEach((stop) => stop()),
  };
}

/** Everything that goes wrong reaches the pane as a sentence of ours. */
async function answer<T>(act: () => T | Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    throw error instanceof Problem ? error : new Problem("spreadsheet-failed");
  }
}

/** The same for work in slices; what its pause throws ends it and is passed on. */
async function untilStopped<T>(
  pause: Pause | undefined,
  act: (pause: Pause) => Promise<T>,
): Promise<T> {
  let stopped: { readonly by: unknown } | undefined;
  const pauseOrStop: Pause = async (share) => {
    try {
      await pause?.(share);
    } catch (thrown) {
      stopped = { by: thrown };
      throw thrown;
    }
  };
  try {
    return await answer(() => act(pauseOrStop));
  } catch (error) {
    throw stopped ? stopped.by : error;
  }
}

/** The same for what tells of its progress; what is thrown there calls it off and is passed on. */
async function untilCalledOff<T>(
  progress: ((rows: number) => void) | undefined,
  act: (tell: (rows: number) => void) => Promise<T>,
): Promise<T> {
  let calledOff: { readonly by: unknown } | undefined;
  const tell = (rows: number) => {
    try {
      progress?.(rows);
    } catch (thrown) {
      calledOff = { by: thrown };
      throw thrown;
    }
  };
  try {
    return await answer(() => act(tell));
  } catch (error) {
    throw calledOff ? calledOff.by : error;
  }
}
