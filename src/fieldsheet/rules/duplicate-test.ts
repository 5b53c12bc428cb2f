import { isBlank, shownValue } from "../../measure/cell-value";
import type { FieldId } from "../../reading/fields";
import type { SheetReading } from "../../reading/sheet-reading";
import type { DecidedTest } from "../judged-test";
import { readingsTaken } from "../reading-fields";
import { sheetRule } from "../rule";
import { TESTS_IN_A_PIECE } from "../same-sample";

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
    // Whole contents are compared only where a name, which is quick to look at, comes again.
    const names = new Set<string>();
    const again = new Set<string>();
    for (const test of all) {
      if (test.record % TESTS_IN_A_PIECE === 0) yield undefined;
      const name = nameOf(test);
      if (name !== undefined) (names.has(name) ? again : names).add(name);
    }
    if (again.size === 0) return;
    const rows = new Map<string, number>();
    for (const test of all) {
      if (test.record % TESTS_IN_A_PIECE === 0) yield undefined;
      const name = nameOf(test);
      if (name === undefined || !again.has(name) || readingsTaken(test).length === 0) continue;
      const content = contentOf(test, fields, sheet);
      const before = rows.get(content);
      if (before === undefined) rows.set(content, test.record);
      else yield { record: test.record, field, values: { before: before + 1 } } as const;
    }
  },
});

function nameOf({ values: { sample, load } }: DecidedTest): string | undefined {
  return sample ?? load;
}

/** What stands in the cells of a test, and what marks for "the same" among them stand for. */
function contentOf(test: DecidedTest, fields: readonly FieldId[], sheet: SheetReading): string {
  const { sample, load } = test.values;
  const cells = fields.map((field) => sheet.cell(test.record, field));
  const written = cells.map((cell) => (isBlank(cell) ? "" : shownValue(cell).trim()));
  return JSON.stringify([sample, load, readingsTaken(test), written]);
}
