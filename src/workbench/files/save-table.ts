import { csvOf } from "../../files/csv/write-csv";
import { saveWorkbook } from "../../files/workbook/save-workbook";
import type { SheetLook } from "../../hosts/sheet-host";
import { freeSheetName } from "../../hosts/sheet-name";
import type { CellValue } from "../../measure/cell-value";
import { handOver } from "../hand-over";

/** Hands a table over as a file of its own, named without its ending. */
export async function handOverTable(
  name: string,
  as: "xlsx" | "csv",
  rows: readonly (readonly CellValue[])[],
  look: SheetLook,
): Promise<void> {
  if (as === "csv") handOver(`${name}.csv`, new TextEncoder().encode(csvOf(rows)), "csv");
  else handOver(`${name}.xlsx`, await workbookOf(name, rows, look));
}

/** A workbook with one sheet that holds a table, ready for paper. */
export async function workbookOf(
  name: string,
  rows: readonly (readonly CellValue[])[],
  { bold, widths, pictures = [], breaks }: SheetLook,
): Promise<Uint8Array> {
  const sheet = {
    name: freeSheetName(name, []),
    rows,
    widths,
    bold,
    heading: false,
    forPaper: true,
    breaks,
    pictures: await Promise.all(
      pictures.map(async (picture) => ({ ...picture, png: await picture.png() })),
    ),
  };
  return (await saveWorkbook(undefined, [sheet], [], () => false)).bytes;
}
