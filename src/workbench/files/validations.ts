import { DataValidationErrorStyle } from "@univerjs/core";
import { blocksOf, cellReference } from "../../files/workbook/cell-reference";
import type { FileSheet } from "../../files/workbook/read-workbook";
import { shownRanges, type SheetSize } from "./shown-ranges";

type FileValidation = NonNullable<FileSheet["dataValidations"]>[number];

const ERROR_STYLES: Readonly<Record<string, DataValidationErrorStyle>> = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
};
const NUMBER = /^-?\d+(?:\.\d+)?$/;

/** The rules of a sheet for what may be typed, as the spreadsheet keeps them. */
export function validations(sheet: FileSheet, size: SheetSize): object[] {
  return (sheet.dataValidations ?? []).flatMap((rule, i) => {
    const ranges = shownRanges(rule.range, size);
    if (ranges.length === 0) return [];
    return [
      {
        uid: `file-${i + 1}`,
        ranges,
        operator: rule.operator,
        ...allowed(sheet, rule),
        // A cell that is still blank is marked by no program; this one would.
        allowBlank: true,
        showErrorMessage: rule.showErrorMessage ?? true,
        errorStyle: ERROR_STYLES[rule.errorStyle ?? "stop"],
        errorTitle: rule.errorTitle,
        error: rule.errorMessage,
        showInputMessage: rule.showInputMessage,
        promptTitle: rule.inputTitle,
        prompt: rule.inputMessage,
      },
    ];
  });
}

/** What may be typed. The spreadsheet compares a list with what a cell shows, so "0.00" were no 0. */
function allowed(sheet: FileSheet, rule: FileValidation): object {
  const { type, values } = rule;
  if (values?.every((value) => NUMBER.test(value)) && showsDecimals(sheet, rule.range)) {
    const { top, left } = blocksOf(rule.range)[0]!;
    const cell = cellReference(top, left);
    const formula1 = `=OR(${values.map((value) => `${cell}=${value}`).join(",")})`;
    return { type: "custom", formula1 };
  }
  const formula1 = values ? values.join(",") : asFormula(rule.formula1);
  return { type, formula1, formula2: asFormula(rule.formula2) };
}

/** Whether a cell of a range has a number format of its own. */
function showsDecimals(sheet: FileSheet, range: string): boolean {
  const blocks = blocksOf(range);
  for (const [key, { style }] of sheet.cells ?? []) {
    if (!style?.numFmt || style.numFmt === "General") continue;
    const [row = 0, column = 0] = key.split(",").map(Number);
    const inside = blocks.some(
      ({ top, left, bottom, right }) =>
        top <= row && row <= bottom && left <= column && column <= right,
    );
    if (inside) return true;
  }
  return false;
}

/** A bound that is a number stays one; cells and formulas get the sign that says so. */
function asFormula(written: string | undefined): string | undefined {
  if (written === undefined || NUMBER.test(written) || written.startsWith("=")) return written;
  return `=${written}`;
}
