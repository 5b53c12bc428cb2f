import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
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

const LINES: Readonly<Record<string, BorderStyleTypes>> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
  thick: BorderStyleTypes.THICK,
};

/** How a cell looks in the spreadsheet, from how it looks in a file. */
export function cellStyle(style: FileStyle, themeColors?: string[]): IStyleData {
  const { font, fill, alignment, numFmt, border } = style;
  const ink = font?.color && webColor(font.color, themeColors);
  const filled = fill?.type === "pattern" && fill.pattern === "solid" ? fill.fgColor : undefined;
  const background = filled && webColor(filled, themeColors);
  const across = alignment?.horizontal && ACROSS[alignment.horizontal];
  const down = alignment?.vertical && DOWN[alignment.vertical];
  return {
    ...(font?.bold && { bl: BooleanNumber.TRUE }),
    ...(font?.italic && { it: BooleanNumber.TRUE }),
    ...(font?.underline && { ul: { s: BooleanNumber.TRUE } }),
    ...(font?.strikethrough && { st: { s: BooleanNumber.TRUE } }),
    ...(font?.name && { ff: font.name }),
    ...(font?.size && { fs: font.size }),
    ...(ink && { cl: { rgb: ink } }),
    ...(background && { bg: { rgb: background } }),
    ...(border && { bd: bordersOf(border, themeColors) }),
    ...(across && { ht: across }),
    ...(down && { vt: down }),
    ...(alignment?.wrapText && { tb: WrapStrategy.WRAP }),
    ...(numFmt && numFmt !== "General" && { n: { pattern: numFmt } }),
  };
}

function bordersOf(border: NonNullable<FileStyle["border"]>, themeColors?: string[]): IBorderData {
  const sides = { t: border.top, r: border.right, b: border.bottom, l: border.left };
  return Object.fromEntries(
    Object.entries(sides).flatMap(([side, line]) => {
      const kind = line && LINES[line.style];
      if (!kind) return [];
      const rgb = (line.color && webColor(line.color, themeColors)) ?? "#000000";
      return [[side, { s: kind, cl: { rgb } }]];
    }),
  );
}
