import type { IWorkbookData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { openFile } from "./files/open-file";

const SAMPLE = "samples/day-of-tests.xlsx";
const EMPTY = { id: "sheet-1", name: "Sheet1", rowCount: 200, columnCount: 26 };

/** Opens workbooks in the spreadsheet, one at a time. */
export class WorkbookOpener {
  private opened = 0;

  constructor(private readonly api: FUniver) {}

  /** Opens a sheet with nothing on it. */
  empty(): void {
    this.show({ name: "Workbook", sheetOrder: [EMPTY.id], sheets: { [EMPTY.id]: EMPTY } });
  }

  /** Opens the day of tests that comes with the workbench. */
  async sample(): Promise<void> {
    const response = await fetch(SAMPLE);
    if (!response.ok) throw new Error(`${SAMPLE} is not there`);
    this.show(await openFile(SAMPLE, new Uint8Array(await response.arrayBuffer())));
  }

  /** Opens a file of the user's. @throws Problem of `openFile`; the workbook that is open stays. */
  async file(file: File): Promise<void> {
    this.show(await openFile(file.name, new Uint8Array(await file.arrayBuffer())));
  }

  private show(workbook: Partial<IWorkbookData>): void {
    const before = this.api.getActiveWorkbook();
    if (before) this.api.disposeUnit(before.getId());
    this.opened += 1;
    this.api.createWorkbook({ ...workbook, id: `workbook-${this.opened}` });
  }
}
