import { dateToSerial } from "hucre";
import { resolveThemeColor } from "hucre/xlsx";
import type { FileCell } from "./read-workbook";

export type FileStyle = NonNullable<FileCell["style"]>;
export type FileColor = NonNullable<NonNullable<FileStyle["font"]>["color"]>;

/** The number under which a spreadsheet knows a date or time, to a hundredth of a second. */
export function serialOf(date: Date): number {
  return Math.round(dateToSerial(date) * 1e7) / 1e7;
}

/** The colour as the web writes it. */
export function webColor(color: FileColor, themeColors: string[] = []): string | undefined {
  const named = color.rgb?.slice(-6);
  const themed =
    color.theme !== undefined && themeColors.length > 0
      ? resolveThemeColor(themeColors, color.theme, color.tint)
      : undefined;
  const hex = named ?? themed?.slice(-6);
  return hex && `#${hex}`;
}
