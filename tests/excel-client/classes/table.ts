import { overlap, type Rectangle } from "../block";
import { ExcelError } from "../excel-error";
import type { SheetModel, TableModel } from "../sheet-model";
import { Emulated, EmulatedCollection, type Session } from "./emulated";
import { Range } from "./range";

export class TableScopedCollection extends EmulatedCollection {
  readonly className = "TableScopedCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly block: Rectangle,
  ) {
    super(session);
  }

  items(): Table[] {
    return this.sheet.tables
      .filter((table) => overlap(table.block, this.block))
      .map((table) => new Table(this.session, this.sheet, table));
  }
  GetItem(key: string): Table {
    const table = this.items().find(({ model }) => model.id === key || model.name === key);
    if (!table) throw new ExcelError("ItemNotFound");
    return table;
  }
}

/** The tables of the workbook; the client reaches a table it has learnt of by its id here. */
export class TableCollection extends EmulatedCollection {
  readonly className = "TableCollection";

  items(): Table[] {
    return this.workbook.sheets.flatMap((sheet) =>
      sheet.tables.map((table) => new Table(this.session, sheet, table)),
    );
  }
  GetItem(key: string): Table {
    const table = this.items().find(({ model }) => model.id === key || model.name === key);
    if (!table) throw new ExcelError("ItemNotFound");
    return table;
  }
}

class Table extends Emulated {
  readonly className = "Table";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly model: TableModel,
  ) {
    super(session);
  }

  get Id(): string {
    return this.model.id;
  }
  get Name(): string {
    return this.model.name;
  }
  get ShowTotals(): boolean {
    return this.model.showTotals;
  }
  GetRange(): Range {
    return new Range(this.session, this.sheet, this.model.block);
  }
}
