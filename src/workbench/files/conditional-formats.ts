import { BooleanNumber, type IStyleBase } from "@univerjs/core";
import { blocksOf, cellReference } from "../../files/workbook/cell-reference";
import type { FileSheet } from "../../files/workbook/read-workbook";
import { webColor, type FileStyle } from "../../files/workbook/stored-values";
import { shownRanges, type SheetSize } from "./shown-ranges";

type FileRule = NonNullable<FileSheet["conditionalRules"]>[number];

const OPERATORS: Readonly<Record<string, string>> = {
  equal: "=",
  notEqual: "<>",
  greaterThan: ">",
  greaterThanOrEqual: ">=",
  lessThan: "<",
  lessThanOrEqual: "<=",
};
const TEXTS: Readonly<Record<string, string>> = {
  containsText: "containsText",
  notContainsText: "notContainsText",
  beginsWith: "beginsWith",
  endsWith: "endsWith",
  containsBlanks: "containsBlanks",
  notContainsBlanks: "notContainsBlanks",
};

/**
 * The conditional formats of a sheet as the spreadsheet keeps them, the first to count first. Rules
 * that it does not know, such as sets of icons, are left out.
 */
export function conditionalFormats(sheet: FileSheet, size: SheetSize, theme?: string[]): object[] {
  const sorted = [...(sheet.conditionalRules ?? [])].sort((a, b) => a.priority - b.priority);
  return sorted.flatMap((each, i) => {
    const rule = shownRule(each, theme);
    const ranges = shownRanges(each.range, size);
    if (!rule || ranges.length === 0) return [];
    return [{ cfId: `file-${i + 1}`, ranges, stopIfTrue: Boolean(each.stopIfTrue), rule }];
  });
}

function shownRule(rule: FileRule, theme?: string[]): object | undefined {
  const { type, operator = "equal", text, colorScale, dataBar } = rule;
  const [first = "", second = ""] = [rule.formula ?? []].flat();
  const style = styleOf(rule.style, theme);
  const highlight = (how: object) => ({ type: "highlightCell", style, ...how });
  if (type === "expression") return highlight({ subType: "formula", value: `=${first}` });
  if (type === "cellIs") {
    const formula = comparison(operator, firstCell(rule.range), first, second);
    return formula ? highlight({ subType: "formula", value: formula }) : undefined;
  }
  if (type === "duplicateValues" || type === "uniqueValues") return highlight({ subType: type });
  const kind = TEXTS[type];
  if (kind) return highlight({ subType: "text", operator: kind, value: text });
  if (type === "colorScale" && colorScale) return scaleOf(colorScale);
  if (type === "dataBar" && dataBar) return barOf(dataBar);
  return undefined;
}

/** A comparison as a formula, so that it may also be one with another cell. */
function comparison(operator: string, cell: string, first: string, second: string) {
  const between = `AND(${cell}>=(${first}),${cell}<=(${second}))`;
  if (operator === "between") return `=${between}`;
  if (operator === "notBetween") return `=NOT(${between})`;
  const sign = OPERATORS[operator];
  return sign && `=${cell}${sign}(${first})`;
}

function firstCell(range: string): string {
  const { top, left } = blocksOf(range)[0] ?? { top: 0, left: 0 };
  return cellReference(top, left);
}

function scaleOf({ cfvo, colors }: NonNullable<FileRule["colorScale"]>): object {
  const config = cfvo.map((value, index) => ({
    index,
    color: `#${(colors[index] ?? "FFFFFF").slice(-6)}`,
    value: boundOf(value),
  }));
  return { type: "colorScale", config };
}

function barOf({ cfvo, color }: NonNullable<FileRule["dataBar"]>): object {
  const [min, max] = cfvo.map(boundOf);
  const positiveColor = `#${color.slice(-6)}`;
  return {
    type: "dataBar",
    isShowValue: true,
    config: { min, max, isGradient: true, positiveColor, nativeColor: positiveColor },
  };
}

function boundOf({ type, value }: { readonly type: string; readonly value?: string }) {
  return { type, ...(value !== undefined && { value: Number(value) }) };
}

/** In a format that a rule puts on, the colour of a plain fill is its second one. */
function styleOf(style: FileStyle | undefined, theme?: string[]): IStyleBase {
  const { font, fill } = style ?? {};
  const ink = font?.color && webColor(font.color, theme);
  const filling = fill?.type === "pattern" ? (fill.bgColor ?? fill.fgColor) : undefined;
  const background = filling && webColor(filling, theme);
  return {
    ...(ink && { cl: { rgb: ink } }),
    ...(background && { bg: { rgb: background } }),
    ...(font?.bold && { bl: BooleanNumber.TRUE }),
    ...(font?.italic && { it: BooleanNumber.TRUE }),
    ...(font?.strikethrough && { st: { s: BooleanNumber.TRUE } }),
  };
}
