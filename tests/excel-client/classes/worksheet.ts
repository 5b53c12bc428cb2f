import { around, cellAt, rectangleFrom, rectanglesFrom, WHOLE_SHEET } from "../block";
import { ExcelError } from "../excel-error";
import type { SheetModel } from "../sheet-model";
import { ChartCollection } from "./chart";
import { Emulated, EmulatedCollection, type Session } from "./emulated";
import { CommentCollection, NoteCollection } from "./note";
import { PageBreakCollection } from "./page-break";
import { PageLayout } from "./page-layout";
import { Range } from "./range";
import { RangeAreas } from "./range-areas";
import { ShapeCollection } from "./shape";

export class Worksheet extends Emulated {
  readonly className = "Worksheet";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  get Id(): string {
    return this.sheet.id;
  }
  get Name(): string {
    return this.sheet.name;
  }
  get Visibility(): string {
    return this.sheet.visibility;
  }
  get Protection(): WorksheetProtection {
    return new WorksheetProtection(this.session, this.sheet);
  }
  get PageLayout(): PageLayout {
    return new PageLayout(this.session, this.sheet);
  }
  get Notes(): NoteCollection {
    return new NoteCollection(this.session, this.sheet);
  }
  get Charts(): ChartCollection {
    return new ChartCollection(this.session, this.sheet);
  }
  get HorizontalPageBreaks(): PageBreakCollection {
    return new PageBreakCollection(this.session, this.sheet);
  }
  get Shapes(): ShapeCollection {
    return new ShapeCollection(this.session, this.sheet);
  }
  get Comments(): CommentCollection {
    return new CommentCollection(this.session, this.sheet);
  }
  GetRange(address: string | null): Range {
    return new Range(this.session, this.sheet, address ? rectangleFrom(address) : WHOLE_SHEET);
  }
  GetRanges(address: string): RangeAreas {
    return new RangeAreas(this.session, this.sheet, rectanglesFrom(address));
  }
  GetRangeByIndexes(top: number, left: number, rows: number, columns: number): Range {
    const block = { top, left, bottom: top + rows - 1, right: left + columns - 1 };
    return new Range(this.session, this.sheet, block);
  }
  /** Of a blank sheet it is the first cell. */
  GetUsedRange(): Range {
    const whole = new Range(this.session, this.sheet, WHOLE_SHEET);
    const used = whole.GetUsedRangeOrNullObject(false)?.block;
    const block = around([...(used ? [used] : []), ...this.sheet.merges]) ?? cellAt(0, 0);
    return new Range(this.session, this.sheet, block);
  }
  Activate(): void {
    if (this.sheet.visibility !== "Visible") throw new ExcelError("InvalidOperation");
    this.workbook.active = this.workbook.sheets.indexOf(this.sheet);
  }
  Delete(): void {
    const { sheets, structureProtected } = this.workbook;
    if (structureProtected) throw new ExcelError("AccessDenied");
    // Deleting a sheet cannot be undone, so it is refused in an undo group.
    if (this.session.isInUndoGroup) throw new ExcelError("UndoNotSupported");
    if (sheets.length === 1) throw new ExcelError("InvalidOperation");
    sheets.splice(sheets.indexOf(this.sheet), 1);
    this.workbook.active = 0;
  }
}

class WorksheetProtection extends Emulated {
  readonly className = "WorksheetProtection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  get Protected(): boolean {
    return this.sheet.protection.protected;
  }
  get Options(): object | null {
    const { allowFormatCells, allowEditObjects } = this.sheet.protection;
    return this.Protected ? { allowFormatCells, allowEditObjects } : null;
  }
}

export class WorksheetCollection extends EmulatedCollection {
  readonly className = "WorksheetCollection";

  items(): Worksheet[] {
    return this.workbook.sheets.map((sheet) => new Worksheet(this.session, sheet));
  }
  GetItem(key: string): Worksheet {
    const sheet = this.workbook.sheets.find(({ id, name }) => id === key || name === key);
    if (!sheet) throw new ExcelError("ItemNotFound");
    return new Worksheet(this.session, sheet);
  }
  GetItemOrNullObject(key: string): Worksheet | null {
    const sheet = this.workbook.sheets.find(
      ({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase(),
    );
    return sheet ? new Worksheet(this.session, sheet) : null;
  }
  GetActiveWorksheet(): Worksheet {
    return new Worksheet(this.session, this.workbook.front);
  }
  Add(name: string): Worksheet {
    const { sheets, structureProtected } = this.workbook;
    if (structureProtected) throw new ExcelError("AccessDenied");
    if (sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase())) {
      throw new ExcelError("ItemAlreadyExists");
    }
    if (name.length > 31 || /[:\\/?*[\]]/.test(name) || /^history$/i.test(name)) {
      throw new ExcelError("InvalidArgument");
    }
    return new Worksheet(this.session, this.workbook.addSheet(name));
  }
  _RegisterDataChangedEvent(): void {}
  _UnregisterDataChangedEvent(): void {}
  _RegisterSelectionChangedEvent(): void {}
  _UnregisterSelectionChangedEvent(): void {}
  _RegisterRowSortedEvent(): void {}
  _UnregisterRowSortedEvent(): void {}
  _RegisterColumnSortedEvent(): void {}
  _UnregisterColumnSortedEvent(): void {}
}
