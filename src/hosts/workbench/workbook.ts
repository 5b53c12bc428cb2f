import type { FUniver } from "@univerjs/core/facade";
import { Problem } from "../../measure/problem";

type FWorkbook = NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>;
/** A sheet of the workbench. */
export type Sheet = ReturnType<FWorkbook["getActiveSheet"]>;

/** The workbook that is open. @throws Problem `sheet-gone`. */
export function openWorkbook(api: FUniver): FWorkbook {
  const workbook = api.getActiveWorkbook();
  if (!workbook) throw new Problem("sheet-gone");
  return workbook;
}

/** The sheet with the id. @throws Problem `sheet-gone`. */
export function sheetWithId(api: FUniver, id: string): Sheet {
  const sheet = openWorkbook(api).getSheetBySheetId(id);
  if (!sheet) throw new Problem("sheet-gone");
  return sheet;
}
