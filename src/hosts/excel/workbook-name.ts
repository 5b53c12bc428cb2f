import { inExcel } from "./in-excel";

/** The name of the file; of one that was never saved the name that Excel gives it meanwhile. */
export function workbookName(): Promise<string> {
  return inExcel(async (context) => {
    const { workbook } = context;
    workbook.load("name");
    await context.sync();
    return workbook.name;
  });
}
