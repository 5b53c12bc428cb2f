import type { CellValue } from "../measure/cell-value";
import { READING_FIELDS, type FieldId } from "./fields";
import type { ReadTests } from "./read-tests";
import type { RecognisedColumn } from "./recognition";
import type { Guard } from "./terms";
import { testersWordIn, type TestersWord } from "./testers-word";

/** Fields in whose place, or beside whose value, people write that a test is void. */
const HOLD_A_WORD: ReadonlySet<FieldId> = new Set<FieldId>([...READING_FIELDS, "air", "sample"]);

const OF_ANOTHER_MATTER: ReadonlySet<Guard> = new Set<Guard>([
  "other test",
  "material",
  "company",
  "place",
  "arrival",
  "departure",
]);

/** Says what a word in the place of a field means; `undefined` for a field that is no place for one. */
export function fieldHoldsAWord(
  field: FieldId,
  header: string,
): ((cell: CellValue) => TestersWord | undefined) | undefined {
  return HOLD_A_WORD.has(field) ? testersWordIn(header) : undefined;
}

/**
 * Reads from one row to before another what the columns that are no field say of the tests beside them.
 * Of several words the one that the test is void counts.
 */
export function wordsBeside(
  columns: readonly RecognisedColumn[],
  rows: readonly (readonly CellValue[])[],
  tests: ReadTests,
): (from: number, to: number) => void {
  const beside = columns
    .filter((column) => column.state !== "read" && !isOfAnother(column))
    .map(({ index, header }) => ({ index, says: testersWordIn(header) }));
  return (from, to) => {
    for (let row = from; row < to; row++) {
      if (tests.blank[row]) continue;
      for (const { index, says } of beside) {
        const word = says(rows[row]![index] ?? null);
        if (word && tests.wordOf(row)?.says !== "void") tests.say(row, { ...word, column: index });
      }
    }
  };
}

/** Whether a column is about something else, whatever it calls void. */
function isOfAnother(column: RecognisedColumn): boolean {
  return column.state === "not ours" && OF_ANOTHER_MATTER.has(column.guard);
}
