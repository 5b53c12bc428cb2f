import { DataValidationErrorStyle } from "@univerjs/core";
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
        type: rule.type,
        operator: rule.operator,
        formula1: rule.values ? rule.values.join(",") : asFormula(rule.formula1),
        formula2: asFormula(rule.formula2),
        allowBlank: rule.allowBlank ?? false,
        showErrorMessage: rule.showErrorMessage ?? true,
        errorStyle: ERROR_STYLES[rule.errorStyle ?? "stop"],
        errorTitle: rule.errorTitle,
        error: rule.errorMessage,
        showInputMessage: rule.showInputMessage,
        promptTitle: rule.inputTitle,
        prompt: rule.inputMessage,
      } satisfies Partial<Record<string, unknown>> & { type: FileValidation["type"] },
    ];
  });
}

/** A bound that is a number stays one; cells and formulas get the sign that says so. */
function asFormula(written: string | undefined): string | undefined {
  if (written === undefined || NUMBER.test(written) || written.startsWith("=")) return written;
  return `=${written}`;
}
