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
  *look({ all }, sheet) {
    const field = sheet.has("sample") ? "sample" : "load";
    const fields = Object.keys(sheet.columns) as FieldId[];
    // Whole contents are compared only where name and readings, which are quick to look at, are alike.
    const alike = new Map<string, DecidedTest[]>();
    for (const test of all) {
      const { sample, load } = test.values;
      if (sample === undefined && load === undefined) continue;
      const readings = readingsTaken(test);
      if (readings.length === 0) continue;
      const key = `${sample}|${load}|${readings.join()}`;
      const others = alike.get(key);
      if (!others) {
        alike.set(key, [test]);
        continue;
      }
      const content = contentOf(test, fields, sheet);
      const before = others.find((other) => contentOf(other, fields, sheet) === content);
      if (before) yield { row: test.row, field, values: { before: before.row + 1 } } as const;
      else others.push(test);
    }
  },
});

function contentOf({ row }: DecidedTest, fields: readonly FieldId[], sheet: SheetReading): string {
  const cells = fields.map((field) => sheet.cell(row, field));
  return JSON.stringify(cells.map((cell) => (isBlank(cell) ? "" : shownValue(cell).trim())));
}
