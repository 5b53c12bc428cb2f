import { isBlank, shownValue } from "../../measure/cell-value";
import type { JudgedRow } from "../judged-row";
import { readingsTaken } from "../reading-fields";
import type { Rule } from "../rule";

/** Two rows that say the same in every recognised column. */
export const duplicateTest: Rule = {
  id: "duplicate-test",
  weight: "doubt",
  needs: [],
  needsOneOf: ["sample", "load"],
  basis: "Two rows alike in every cell are one test entered twice (our own rule).",
  lookAcross(rows, sheet) {
    const seen = new Map<string, number>();
    return rows.flatMap((row) => {
      if (!hasName(row) || readingsTaken(row).length === 0) return [];
      const content = contentOf(row);
      const before = seen.get(content);
      if (before === undefined) seen.set(content, row.row);
      if (before === undefined) return [];
      const field = sheet.has("sample") ? "sample" : "load";
      return [{ row: row.row, field, values: { before: before + 1 } }];
    });
  },
};

function hasName({ values: { sample, load } }: JudgedRow): boolean {
  return sample !== undefined || load !== undefined;
}

function contentOf({ cells }: JudgedRow): string {
  const shown = Object.values(cells).map((cell) => (isBlank(cell) ? "" : shownValue(cell).trim()));
  return JSON.stringify(shown);
}
