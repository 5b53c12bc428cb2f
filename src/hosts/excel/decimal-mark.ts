import type { DecimalMark } from "../../measure/number-from-cell";
import { excelCan } from "./abilities";
import { inExcel } from "./in-excel";

/** How decimals are written in this workbook. */
export function decimalMarkOfExcel(): Promise<DecimalMark> {
  return inExcel(async (context) => {
    const answer = askDecimalMark(context);
    await context.sync();
    return answer();
  });
}

/** Asks how decimals are written, along with something else: the answer is there after the next sync. */
export function askDecimalMark(context: Excel.RequestContext): () => DecimalMark {
  if (!excelCan("decimalSeparator")) {
    return () => decimalMarkOfLanguage(Office.context.contentLanguage);
  }
  const { application } = context.workbook;
  application.load("decimalSeparator");
  return () => (application.decimalSeparator === "," ? "," : ".");
}

/** For an Excel that cannot be asked: what most people write in the language of the workbook. */
function decimalMarkOfLanguage(language: string): DecimalMark {
  const parts = new Intl.NumberFormat(language || "en-US").formatToParts(0.5);
  return parts.find(({ type }) => type === "decimal")?.value === "," ? "," : ".";
}
