import type { IWorkbookData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { listenToEdits } from "../hosts/workbench/listening";
import { openWorkbook } from "../hosts/workbench/workbook";
import { say } from "../messages/pane-catalogue";
import { EditsSinceOpening } from "./files/edits-since-opening";
import { openFile, type OpenedWorkbook } from "./files/open-file";
import { fileToSave, notesByCell, type FileBehind, type FileToSave } from "./files/save-file";

const SAMPLE = "samples/day-of-tests.xlsx";
const SAMPLE_NAME = "day-of-tests.xlsx";

/** Opens workbooks in the spreadsheet, one at a time, and saves what is open. */
export class WorkbookOpener {
  private opened = 0;
  private changed = false;
  private sampleBytes: Uint8Array | undefined;
  private file: FileBehind | undefined;
  private edits: EditsSinceOpening | undefined;

  /** @param onOpened Called whenever another workbook is there. */
  constructor(
    private readonly api: FUniver,
    private readonly onOpened: () => void,
  ) {
    addEventListener("beforeunload", (event) => {
      if (this.changed) event.preventDefault();
    });
  }

  /** Fetches the sample, once: later nothing is asked for any more. */
  async loadSample(): Promise<void> {
    const response = await fetch(SAMPLE);
    if (!response.ok) throw new Error(`${SAMPLE} is not there`);
    this.sampleBytes = new Uint8Array(await response.arrayBuffer());
  }

  /** Opens a sheet with nothing on it. */
  empty(): void {
    const id = this.nextId();
    const sheet = { id: `${id}-1`, name: "Sheet1", rowCount: 200, columnCount: 26 };
    this.show({
      data: { id, name: "Workbook", sheetOrder: [sheet.id], sheets: { [sheet.id]: sheet } },
      sheetNames: [],
      remarks: [],
    });
  }

  /** Opens the day of tests that comes with the workbench. */
  async sample(): Promise<void> {
    if (!this.sampleBytes) throw new Error(`${SAMPLE} is not loaded`);
    this.show(await openFile(this.nextId(), SAMPLE_NAME, this.sampleBytes));
  }

  /**
   * Opens a file of the user's.
   *
   * @returns What was left out or is not shown, in sentences.
   * @throws Problem of `openFile`; the workbook that is open stays.
   */
  async open(file: File): Promise<readonly string[]> {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const opened = await openFile(this.nextId(), file.name, bytes);
    return this.show(opened) ? opened.remarks : [];
  }

  /** What is open as a file, with a name for it. @throws Problem of `fileToSave`. */
  async toSave(): Promise<FileToSave & { readonly name: string }> {
    const saved = await fileToSave(this.api, this.file!, this.edits!);
    return { ...saved, name: checkedName(openWorkbook(this.api).getName()) };
  }

  /** Told when what is open was saved, so that nothing would be lost any more. */
  saved(): void {
    this.changed = false;
  }

  /** No two sheets that were ever open have one id, so nothing is done to a sheet that is meant no more. */
  private nextId(): string {
    this.opened += 1;
    return `workbook-${this.opened}`;
  }

  private show({ data, original, sheetNames }: OpenedWorkbook): boolean {
    if (this.changed && !confirm(say("changes-would-be-lost"))) return false;
    const before = this.api.getActiveWorkbook();
    if (before) this.api.disposeUnit(before.getId());
    this.api.createWorkbook(data as IWorkbookData);
    this.changed = false;
    // The spreadsheet can only be listened to once it has a workbook.
    if (!this.edits) listenToEdits(this.api, () => (this.changed = true));
    this.edits?.stop();
    this.edits = new EditsSinceOpening(this.api);
    const sheets = openWorkbook(this.api).getSheets();
    this.file = {
      original,
      names: sheetNames,
      sheets: new Map(
        original ? sheets.map((sheet) => [sheet.getSheetId(), sheet.getSheetName()]) : [],
      ),
      notes: new Map(sheets.map((sheet) => [sheet.getSheetId(), notesByCell(sheet)])),
    };
    this.onOpened();
    return true;
  }
}

/** "loads checked.xlsx" for "loads.csv"; a workbook with macros keeps the ending that says so. */
function checkedName(opened: string): string {
  const ending = /\.xlsm$/i.test(opened) ? ".xlsm" : ".xlsx";
  return `${opened.replace(/\.[^.]*$/, "")} checked${ending}`;
}
