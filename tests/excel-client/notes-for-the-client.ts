/*
 * The client library on npm ends before notes (ExcelApi 1.18), which the library that Excel loads has.
 * Here it gets them, from the building blocks that its other classes are made of, so that the adapter's
 * notes are tested on its real load and sync as well.
 */

/** Adds `Worksheet.notes` to a client library. */
export function addNotesTo(library: { Excel: any; OfficeExtension: any }): void {
  const { Excel, OfficeExtension } = library;
  const { BatchApiHelper: batch, ClientObject, Utility } = OfficeExtension;

  class Note extends ClientObject {
    private held: string | undefined;

    get _className(): string {
      return "Note";
    }
    get content(): string {
      Utility.throwIfNotLoaded("content", this.held, "Note", (this as any)._isNull);
      return this.held ?? "";
    }
    set content(content: string) {
      batch.invokeSetProperty(this, "Content", content, 0);
    }
    getLocation(): unknown {
      return batch.createMethodObject(
        Excel.Range,
        this,
        "GetLocation",
        1,
        [],
        false,
        true,
        null,
        4,
      );
    }
    delete(): void {
      batch.invokeMethod(this, "Delete", 0, [], 0, 0);
    }
    load(option: unknown): unknown {
      return Utility.load(this, option);
    }
    _handleResult(value: any): void {
      super._handleResult(value);
      if (Utility.isNullOrUndefined(value)) return;
      Utility.fixObjectPathIfNecessary(this, value);
      if (!Utility.isUndefined(value.Content)) this.held = value.Content;
    }
  }

  class NoteCollection extends ClientObject {
    private held: Note[] | undefined;

    get _className(): string {
      return "NoteCollection";
    }
    get _isCollection(): boolean {
      return true;
    }
    get items(): readonly Note[] {
      Utility.throwIfNotLoaded("items", this.held, "NoteCollection", (this as any)._isNull);
      return this.held ?? [];
    }
    add(cellAddress: string, content: string): unknown {
      const given = [cellAddress, content];
      return batch.createMethodObject(Note, this, "Add", 0, given, false, true, null, 0);
    }
    getItem(key: string): unknown {
      return batch.createIndexerObject(Note, this, [key]);
    }
    getItemOrNullObject(key: string): unknown {
      return batch.createMethodObject(
        Note,
        this,
        "GetItemOrNullObject",
        1,
        [key],
        false,
        false,
        null,
        4,
      );
    }
    load(option: unknown): unknown {
      return Utility.load(this, option);
    }
    _handleResult(value: any): void {
      super._handleResult(value);
      if (Utility.isNullOrUndefined(value)) return;
      Utility.fixObjectPathIfNecessary(this, value);
      if (!value._Items) return;
      this.held = value._Items.map((data: unknown, index: number) => {
        const note = batch.createChildItemObject(Note, false, this, data, index);
        note._handleResult(data);
        return note;
      });
    }
  }

  Object.defineProperty(Excel.Worksheet.prototype, "notes", {
    configurable: true,
    get(this: object) {
      return batch.createPropertyObject(NoteCollection, this, "Notes", true, 4);
    },
  });
}
