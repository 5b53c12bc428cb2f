import type { WorkbookModel } from "../workbook-model";
import type { SheetModel } from "../sheet-model";
import { ExcelError } from "../excel-error";

/** What the emulated classes work on. */
export interface Session {
  readonly workbook: WorkbookModel;
  readonly localFormulas: boolean;
  readonly isInUndoGroup: boolean;
  /** Tells listeners that the add-in has changed cells or formats of a sheet. */
  changedByAddin(sheet: SheetModel, address: string): void;
}

/**
 * An emulated class of Excel. Its members carry the names that go over the wire, which begin with a
 * capital; what an interpreter may reach are the getters, setters and methods of its prototype.
 */
export abstract class Emulated {
  /** The name that the class has in Excel's documentation. */
  abstract readonly className: string;
  /** Set once the client asks to keep the object over several requests. */
  referenceId: string | undefined;

  constructor(protected readonly session: Session) {}

  get workbook(): WorkbookModel {
    return this.session.workbook;
  }
}

/** A collection; its items are handed over one by one. */
export abstract class EmulatedCollection extends Emulated {
  abstract items(): Emulated[];

  GetItemAt(index: number): Emulated {
    const item = this.items()[index];
    if (!item) throw new ExcelError("InvalidArgument");
    return item;
  }

  GetCount(): number {
    return this.items().length;
  }
}

/** Refuses what a protected sheet does not allow. */
export function demandLeave(
  sheet: SheetModel,
  kind: "values" | "allowFormatCells" | "allowEditObjects",
): void {
  const { protection } = sheet;
  if (!protection.protected) return;
  if (kind === "values" || !protection[kind]) throw new ExcelError("AccessDenied");
}
