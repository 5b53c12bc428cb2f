import { isBlank, shownValue } from "../../measure/cell-value";
import type { FieldId } from "../../reading/fields";
import type { SheetReading } from "../../reading/sheet-reading";
import type { DecidedTest } from "../judged-test";
import { readingsTaken } from "../reading-fields";
import { sheetRule } from "../rule";

/** Two rows that say the same in every recognised column. */
export const duplicateTest = sheetRule({
  id: "duplicate-test",
  weight: "doubt",
  needs: [],
  needsOneOf: ["sample", "load"],
  says: ["duplicate-test"],
  basis: "Two rows alike in every cell are one test entered twice (our own rule).",
  look({ all }, sheet) {
    const field = sheet.has("sample") ? "sample" : "load";
    const fields = Object.keys(sheet.columns) as FieldId[];
    const seen = new Map<string, number>();
    return all.flatMap((test) => {
      if (!hasName(test) || readingsTaken(test).length === 0) return [];
      const content = contentOf(test, fields, sheet);
      const before = seen.get(content);
      if (before === undefined) seen.set(content, test.row);
      if (before === undefined) return [];
      return [{ row: test.row, field, values: { before: before + 1 } } as const];
    });
  },
});

function hasName({ values: { sample, load } }: DecidedTest): boolean {
  return sample !== undefined || load !== undefined;
}

function contentOf({ row }: DecidedTest, fields: readonly FieldId[], sheet: SheetReading): string {
  const cells = fields.map((field) => sheet.cell(row, field));
  return JSON.stringify(cells.map((cell) => (isBlank(cell) ? "" : shownValue(cell).trim())));
}
