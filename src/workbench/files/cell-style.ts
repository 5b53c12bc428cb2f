import {
  BooleanNumber,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IStyleData,
} from "@univerjs/core";
import { webColor, type FileStyle } from "../../files/workbook/stored-values";

const ACROSS: Readonly<Record<string, HorizontalAlign>> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
};
const DOWN: Readonly<Record<string, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};

/** How a cell looks in the spreadsheet, from how it looks in a file. */
export function cellStyle(style: FileStyle, themeColors?: string[]): IStyleData {
  const { font, fill, alignment, numFmt } = style;
  const ink = font?.color && webColor(font.color, themeColors);
  const filled = fill?.type === "pattern" && fill.pattern === "solid" ? fill.fgColor : undefined;
  const background = filled && webColor(filled, themeColors);
  const across = alignment?.horizontal && ACROSS[alignment.horizontal];
  const down = alignment?.vertical && DOWN[alignment.vertical];
  return {
    ...(font?.bold && { bl: BooleanNumber.TRUE }),
    ...(font?.italic && { it: BooleanNumber.TRUE }),
    ...(font?.size && { fs: font.size }),
    ...(ink && { cl: { rgb: ink } }),
    ...(background && { bg: { rgb: background } }),
    ...(across && { ht: across }),
    ...(down && { vt: down }),
    ...(alignment?.wrapText && { tb: WrapStrategy.WRAP }),
    ...(numFmt && numFmt !== "General" && { n: { pattern: numFmt } }),
  };
}
