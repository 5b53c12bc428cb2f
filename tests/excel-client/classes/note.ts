import { cellAt, overlap, rectangleFrom, type Rectangle } from "../block";
import { ExcelError } from "../excel-error";
import type { NoteModel, SheetModel } from "../sheet-model";
import { demandLeave, Emulated, EmulatedCollection, type Session } from "./emulated";
import { Range } from "./range";

/** Notes of a sheet. Unlike other items they have no id: the client addresses them by position. */
export class NoteCollection extends EmulatedCollection {
  readonly className = "NoteCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  items(): Note[] {
    return this.sheet.notes.map((note) => new Note(this.session, this.sheet, note));
  }

  GetItem(address: string): Note {
    const { top, left } = rectangleFrom(address);
    const note = this.items().find(({ model }) => model.row === top && model.column === left);
    if (!note) throw new ExcelError("ItemNotFound");
    return note;
  }

  GetItemOrNullObject(address: string): Note | null {
    const { top, left } = rectangleFrom(address);
    return this.items().find(({ model }) => model.row === top && model.column === left) ?? null;
  }

  Add(address: string, content: string): Note {
    demandLeave(this.sheet, "allowEditObjects");
    const block = rectangleFrom(address);
    const taken = [...this.sheet.notes, ...this.sheet.comments].some(
      ({ row, column }) => row === block.top && column === block.left,
    );
    if (taken) throw new ExcelError("InvalidOperation");
    if (this.isInsideMerge(block)) throw new ExcelError("InvalidArgument");
    const model = { row: block.top, column: block.left, content };
    this.sheet.notes.push(model);
    return new Note(this.session, this.sheet, model);
  }

  private isInsideMerge(block: Rectangle): boolean {
    return this.sheet.merges.some(
      (merge) => overlap(merge, block) && !(merge.top === block.top && merge.left === block.left),
    );
  }
}

class Note extends Emulated {
  readonly className = "Note";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly model: NoteModel,
  ) {
    super(session);
  }

  get Content(): string {
    return this.model.content;
  }
  set Content(content: string) {
    demandLeave(this.sheet, "allowEditObjects");
    this.model.content = content;
  }
  GetLocation(): Range {
    return new Range(this.session, this.sheet, cellAt(this.model.row, this.model.column));
  }
  Delete(): void {
    demandLeave(this.sheet, "allowEditObjects");
    this.sheet.notes.splice(this.sheet.notes.indexOf(this.model), 1);
  }
}

/** Threaded comments of a sheet. */
export class CommentCollection extends EmulatedCollection {
  readonly className = "CommentCollection";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
  ) {
    super(session);
  }

  items(): Comment[] {
    return this.sheet.comments.map((model) => new Comment(this.session, this.sheet, model));
  }
  GetItem(id: string): Comment {
    const comment = this.items().find((one) => one.Id === id);
    if (!comment) throw new ExcelError("ItemNotFound");
    return comment;
  }
}

class Comment extends Emulated {
  readonly className = "Comment";

  constructor(
    session: Session,
    readonly sheet: SheetModel,
    readonly model: NoteModel & { id: string },
  ) {
    super(session);
  }

  get Id(): string {
    return this.model.id;
  }
  GetLocation(): Range {
    return new Range(this.session, this.sheet, cellAt(this.model.row, this.model.column));
  }
}
