import { inExcel } from "./in-excel";

/** The first of January 2000 in a workbook that counts its days from 1904. */
const DAY_COUNTED_FROM_1904 = 35_064;

/**
 * From which year the workbook counts its days. Excel tells it only by the number that it gives a day; one
 * that does not work out such a number, or not now, leaves it open.
 */
export async function datesFromOfExcel(): Promise<1900 | 1904 | undefined> {
  try {
    return await inExcel(async (context) => {
      const day = context.workbook.functions.date(2000, 1, 1);
      day.load("value");
      await context.sync();
      return day.value === DAY_COUNTED_FROM_1904 ? 1904 : 1900;
    });
  } catch {
    return undefined;
  }
}
