import type { IWorkbookData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { listenToEdits } from "../hosts/workbench/listening";
import { say } from "../messages/pane-catalogue";
import { openFile } from "./files/open-file";

const SAMPLE = "samples/day-of-tests.xlsx";
const EMPTY: Partial<IWorkbookData> = {
  name: "Workbook",
  sheetOrder: ["sheet-1"],
  sheets: { "sheet-1": { id: "sheet-1", name: "Sheet1", rowCount: 200, columnCount: 26 } },
};

/** Opens workbooks in the spreadsheet, one at a time, and asks before changes would be lost. */
export class WorkbookOpener {
  private opened = 0;
  private changed = false;
  private sampleBytes: Uint8Array | undefined;

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
    this.show(EMPTY);
  }

  /** Opens the day of tests that comes with the workbench. */
  async sample(): Promise<void> {
    if (!this.sampleBytes) throw new Error(`${SAMPLE} is not loaded`);
    this.show((await openFile(SAMPLE, this.sampleBytes)).data);
  }

  /** Opens a file of the user's. @throws Problem of `openFile`; the workbook that is open stays. */
  async file(file: File): Promise<void> {
    this.show((await openFile(file.name, new Uint8Array(await file.arrayBuffer()))).data);
  }

  private show(workbook: Partial<IWorkbookData>): void {
    if (this.changed && !confirm(say("changes-would-be-lost"))) return;
    const before = this.api.getActiveWorkbook();
    if (before) this.api.disposeUnit(before.getId());
    this.opened += 1;
    this.api.createWorkbook(withOwnIds(workbook, `workbook-${this.opened}`));
    this.changed = false;
    // The spreadsheet can only be listened to once it has a workbook.
    if (this.opened === 1) listenToEdits(this.api, () => (this.changed = true));
    this.onOpened();
  }
}

/** No two sheets that were ever open have one id, so nothing is done to a sheet that is meant no more. */
function withOwnIds(workbook: Partial<IWorkbookData>, id: string): Partial<IWorkbookData> {
  const own = (sheetId: string) => `${id}-${sheetId}`;
  const { sheetOrder = [], sheets = {} } = workbook;
  return {
    ...workbook,
    id,
    sheetOrder: sheetOrder.map(own),
    sheets: Object.fromEntries(
      Object.entries(sheets).map(([sheetId, sheet]) => [
        own(sheetId),
        { ...sheet, id: own(sheetId) },
      ]),
    ),
  };
}
