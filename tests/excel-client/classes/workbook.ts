import { cellAt } from "../block";
import { ExcelError } from "../excel-error";
import { Emulated, EmulatedCollection, type Session } from "./emulated";
import { Range } from "./range";
import { TableCollection } from "./table";
import { WorksheetCollection } from "./worksheet";

export class Workbook extends Emulated {
  readonly className = "Workbook";

  get Name(): string {
    return this.workbook.name;
  }
  get Worksheets(): WorksheetCollection {
    return new WorksheetCollection(this.session);
  }
  get Tables(): TableCollection {
    return new TableCollection(this.session);
  }
  get Settings(): SettingCollection {
    return new SettingCollection(this.session);
  }
  get Application(): Application {
    return new Application(this.session);
  }
  get Functions(): Functions {
    return new Functions(this.session);
  }
  /** Throws for a selection in several parts, and for a chart. */
  GetSelectedRange(): Range {
    const [block, ...others] = this.workbook.selection;
    if (!block || others.length > 0) throw new ExcelError("InvalidSelection");
    return new Range(this.session, this.workbook.front, block);
  }
  GetActiveCell(): Range {
    const [block] = this.workbook.selection;
    if (!block) throw new ExcelError("InvalidSelection");
    return new Range(this.session, this.workbook.front, cellAt(block.top, block.left));
  }
}

/** Worksheet functions, called without a cell. */
class Functions extends Emulated {
  readonly className = "Functions";

  /** The number of a day, counted from the year from which the workbook counts. */
  Date(year: number, month: number, day: number): FunctionResult {
    const from = this.workbook.datesFrom === 1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
    const days = (Date.UTC(year, month - 1, day) - from) / 86_400_000;
    return new FunctionResult(this.session, days);
  }
}

class FunctionResult extends Emulated {
  readonly className = "FunctionResult";

  constructor(
    session: Session,
    readonly result: number,
  ) {
    super(session);
  }

  get Value(): number {
    return this.result;
  }
}

class Application extends Emulated {
  readonly className = "Application";

  get DecimalSeparator(): string {
    return this.workbook.decimalSeparator;
  }
}

class SettingCollection extends EmulatedCollection {
  readonly className = "SettingCollection";

  items(): Setting[] {
    return [...this.workbook.settings.keys()].map((key) => new Setting(this.session, key));
  }
  Add(key: string, value: unknown): Setting {
    this.workbook.settings.set(key, value);
    return new Setting(this.session, key);
  }
  GetItemOrNullObject(key: string): Setting | null {
    return this.workbook.settings.has(key) ? new Setting(this.session, key) : null;
  }
}

class Setting extends Emulated {
  readonly className = "Setting";

  constructor(
    session: Session,
    readonly key: string,
  ) {
    super(session);
  }

  get Value(): unknown {
    return this.workbook.settings.get(this.key);
  }
}
