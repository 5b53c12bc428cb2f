import { isBlank } from "../measure/cell-value";
import type { BlockPlace } from "./block-place";
import { labelledValue, type Cells, type LabelledValue } from "./labelled-value";
import { isKnownLabel, isLabelText } from "./labels";
import type { Term } from "./terms";
import { languagesOf, understand } from "./words-in-header";

/** What may stand above a column of values whose quantities stand to the left: "Min.", "Spec.", "Result". */
const QUALIFIERS: ReadonlySet<Term> = new Set<Term>([
  "low",
  "high",
  "limit",
  "specified",
  "tolerance",
  "allowed",
  "measured",
  "result",
  "reported",
  "first",
  "second",
  "third",
  "initial",
  "final",
  "unit",
  "status",
  "remark",
  "in-order",
  "reading",
  "of",
]);

const LONGEST = 30;
/** A sample's name is no qualifier, whatever its letters and figures may stand for. */
const IN_WORDS = /^[^\d]*\p{L}{3}[^\d]*$|^\d ?(?:st|nd|rd|er|re|e|ère|ème|ª|º|a|\.)\b/iu;

/** Values of a table with quantities down the left and what is said of each above, and its titles. */
export interface CrossTables {
  readonly pairs: readonly LabelledValue[];
  /** Places of everything that belongs to such a table. */
  readonly places: readonly BlockPlace[];
}

/** Finds tables such as "Property, Min., Max." with a quantity in each row, up to the first other row. */
export function crossTables(block: Cells): CrossTables {
  const pairs: LabelledValue[] = [];
  const places: BlockPlace[] = [];
  for (const [row, cells] of block.entries()) {
    for (let column = 1; column + 1 < cells.length; column++) {
      const width = cells.slice(column).findIndex((cell) => !isQualifier(cell));
      const until = width < 0 ? cells.length : column + width;
      if (until - column < 2) continue;
      const rows = rowsBelow(block, row, column, until);
      if (rows.length < 2) continue;
      for (let at = column; at < until; at++) {
        places.push({ row, column: at });
        for (const below of rows) {
          const quantity = String(block[below]![column - 1]).trim();
          const value = { row: below, column: at };
          const label = { row: below, column: column - 1 };
          places.push(value, label);
          const titles = [quantity.replace(/\s*:$/, "")];
          if (!isBlank(block[below]![at]))
            pairs.push(labelledValue(String(cells[at]), label, value, { titles }));
        }
      }
      column = until;
    }
  }
  return { pairs, places };
}

/** The rows below titles, each of which begins with a quantity and holds a value below one of them. */
function rowsBelow(block: Cells, row: number, column: number, until: number): number[] {
  const rows: number[] = [];
  for (let below = row + 1; below < block.length; below++) {
    const cells = block[below]!;
    const values = cells.slice(column, until);
    if (!isKnownLabel(cells[column - 1])) break;
    if (values.every(isBlank) || values.some(isKnownLabel)) break;
    rows.push(below);
  }
  return rows;
}

function isQualifier(cell: Cells[number][number] | undefined): boolean {
  if (!isLabelText(cell) || cell.length > LONGEST || !IN_WORDS.test(cell)) return false;
  const { words } = understand(cell, languagesOf([cell]));
  const known = words.filter(({ terms }) => terms.length > 0);
  return (
    known.length > 0 &&
    known.length === words.length &&
    known.every(({ terms }) => terms.some((term) => QUALIFIERS.has(term)))
  );
}
