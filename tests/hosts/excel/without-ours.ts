import { weightOfFormula } from "../../../src/hosts/mark-tag";
import { readNote } from "../../../src/hosts/our-note";
import type { SheetModel } from "../../excel-client/sheet-model";
import { WorkbookModel } from "../../excel-client/workbook-model";

/** Sheets as they are without our marks: what is left is the user's. */
export function withoutOurs(sheets: readonly SheetModel[]): unknown {
  const bare = new WorkbookModel();
  bare.sheets.splice(0, 1, ...structuredClone([...sheets]));
  for (const sheet of bare.sheets) {
    sheet.formats = sheet.formats.filter(({ formula }) => !weightOfFormula(formula));
    sheet.notes = sheet.notes.filter(({ content }) => readNote(content).whose !== "ours");
  }
  return bare.snapshot();
}
