import type { DecimalMark } from "../../measure/number-from-cell";
import { excelCan } from "./abilities";
import { inExcel } from "./in-excel";

/** How decimals are written in this workbook. */
export async function decimalMarkOfExcel(): Promise<DecimalMark> {
  if (!excelCan("decimalSeparator")) return decimalMarkOfLanguage(Office.context.contentLanguage);
  return inExcel(async (context) => {
    const { application } = context.workbook;
    application.load("decimalSeparator");
    await context.sync();
    return application.decimalSeparator === "," ? "," : ".";
  });
}

/** An Excel that cannot be asked: what people who write the language of the workbook mostly use. */
function decimalMarkOfLanguage(language: string): DecimalMark {
  const [part] = new Intl.NumberFormat(language || "en-US")
    .formatToParts(0.5)
    .filter(({ type }) => type === "decimal");
  return part?.value === "," ? "," : ".";
}
