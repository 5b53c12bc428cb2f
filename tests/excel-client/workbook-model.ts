import { cellAt, type Rectangle } from "./block";
import { newSheet, type SheetModel } from "./sheet-model";

/** A workbook: its sheets, what is selected, and what add-ins keep in it. Plain data. */
export class WorkbookModel {
  readonly sheets: SheetModel[] = [];
  readonly settings = new Map<string, unknown>();
  active = 0;
  /** The selected blocks on the sheet in front; none where a chart is selected. */
  selection: Rectangle[] = [cellAt(0, 0)];
  structureProtected = false;
  decimalSeparator = ".";
  /** Of the file. */
  name = "loads.xlsx";
  datesFrom: 1900 | 1904 = 1900;
  private given = 0;

  constructor(firstSheet = "Loads") {
    this.addSheet(firstSheet);
  }

  /** An id that nothing in this workbook has yet. */
  newId(): string {
    this.given += 1;
    return `{${this.given.toString().padStart(8, "0")}}`;
  }

  addSheet(name: string): SheetModel {
    const sheet = newSheet(this.newId(), name);
    this.sheets.push(sheet);
    return sheet;
  }

  get front(): SheetModel {
    return this.sheet(this.active);
  }

  sheet(position: number): SheetModel {
    const sheet = this.sheets[position];
    if (!sheet) throw new RangeError(`the workbook has no sheet ${position}`);
    return sheet;
  }

  /** Selects blocks on a sheet and brings it to the front. */
  select(sheet: SheetModel, ...blocks: Rectangle[]): void {
    this.active = this.sheets.indexOf(sheet);
    this.selection = blocks;
  }

  /** Everything that a user can see of the sheets, without the ids that Excel gives out itself. */
  snapshot(): unknown {
    return structuredClone(this.sheets).map((sheet) => ({
      ...sheet,
      id: "",
      formats: sheet.formats.map(withoutId),
      tables: sheet.tables.map(withoutId),
      comments: sheet.comments.map(withoutId),
      notes: sheet.notes.sort((a, b) => a.row - b.row || a.column - b.column),
    }));
  }
}

function withoutId<T extends { id: string }>(one: T): T {
  return { ...one, id: "" };
}
