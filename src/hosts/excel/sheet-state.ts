import type { Block } from "../cell-address";
import { excelCan } from "./abilities";

/** What is asked of a sheet before marks are put on it or taken off. */
interface AskedSheet {
  readonly sheet: Excel.Worksheet;
  readonly protection: Excel.WorksheetProtection;
  readonly formats: Excel.ConditionalFormatCollection;
  readonly notes: Excel.NoteCollection | undefined;
  readonly comments: Excel.CommentCollection | undefined;
  readonly merged: Excel.RangeAreas | undefined;
  /** The rectangle around the cells to be marked. */
  readonly toMark: Excel.Range | undefined;
}

/** What a sheet lets us do, and what stands on it, of ours and of others. */
export interface SheetState extends AskedSheet {
  readonly name: string;
  /** Whether conditional formats can be put on and taken off. */
  readonly takesFormats: boolean;
  /** Whether notes can be put on and taken off. */
  readonly takesNotes: boolean;
}

/** A sheet, and what is to be done on it. */
export interface SheetToAsk {
  readonly sheet: Excel.Worksheet;
  /** Also ask for what keeps a note of ours off a cell: comments and merged cells. */
  readonly forNotes?: boolean;
  /** The rectangle around the cells to be marked; is anything in it hidden? */
  readonly toMark?: Block | undefined;
}

/** Asks sheets for their protection, conditional formats and notes; in one sync. */
export async function stateOfSheets(
  context: Excel.RequestContext,
  sheets: readonly SheetToAsk[],
): Promise<SheetState[]> {
  const asked = sheets.map(ask);
  await context.sync();
  return asked.map((one) => ({ ...one, name: one.sheet.name, ...leaveOf(one.protection) }));
}

function ask({ sheet, forNotes = false, toMark }: SheetToAsk): AskedSheet {
  const { protection } = sheet;
  const formats = sheet.getRange().conditionalFormats;
  sheet.load("name");
  protection.load("protected,options");
  formats.load("items/id,items/type");
  const notes = excelCan("notes") ? sheet.notes : undefined;
  notes?.load("items/content");
  const comments = forNotes && excelCan("comments") ? sheet.comments : undefined;
  comments?.load("items/id");
  const merged =
    forNotes && excelCan("mergedAreas")
      ? sheet.getUsedRange().getMergedAreasOrNullObject()
      : undefined;
  merged?.load("areaCount");
  const around = toMark && rangeOf(sheet, toMark);
  around?.load("rowHidden,columnHidden");
  return { sheet, protection, formats, notes, comments, merged, toMark: around };
}

function rangeOf(sheet: Excel.Worksheet, { row, column, rows, columns }: Block): Excel.Range {
  return sheet.getRangeByIndexes(row, column, rows, columns);
}

/** A protected sheet may still allow its formats or its notes to be changed. */
function leaveOf(protection: Excel.WorksheetProtection) {
  if (!protection.protected) return { takesFormats: true, takesNotes: true };
  const { allowFormatCells, allowEditObjects } = protection.options;
  return { takesFormats: allowFormatCells === true, takesNotes: allowEditObjects === true };
}
