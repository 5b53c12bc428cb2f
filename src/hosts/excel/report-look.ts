import type { SheetLook } from "../sheet-host";
import { putPictures } from "./pictures";

/** Of a column: the width of a character of the usual font, and of the space beside it, in points. */
const CHARACTER = 5.25;
const BESIDE = 3.75;

/**
 * What a sheet gets besides its table when it is to be read and printed: headings in bold, widths, and for
 * paper landscape, one page wide, with its name and the numbers of the pages.
 */
export function asReport(look: SheetLook) {
  return async (sheet: Excel.Worksheet): Promise<void> => {
    setLook(sheet, look);
    const { pageLayout } = sheet;
    pageLayout.orientation = Excel.PageOrientation.landscape;
    pageLayout.zoom = { horizontalFitToPages: 1 };
    // Name of the file and of the sheet, number of the page and of all, as Excel writes them.
    const foot = pageLayout.headersFooters.defaultForAllPages;
    foot.leftFooter = "&F, &A";
    foot.rightFooter = "&P / &N";
    for (const row of look.breaks ?? [])
      sheet.horizontalPageBreaks.add(sheet.getRangeByIndexes(row, 0, 1, 1));
    await putPictures(sheet, look.pictures ?? []);
  };
}

/** Headings in bold, and widths. */
export function setLook(sheet: Excel.Worksheet, { bold, widths }: SheetLook): void {
  for (const row of bold) sheet.getRangeByIndexes(row, 0, 1, widths.length).format.font.bold = true;
  widths.forEach((width, column) => {
    const { format } = sheet.getRangeByIndexes(0, column, 1, 1).getEntireColumn();
    format.columnWidth = BESIDE + width * CHARACTER;
  });
}
