import { fieldName } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import type { UnreadColumn } from "../reading/unread-column";
import type { Finding } from "./finding";

/** What is said of a column that was not read, and the tests that it touches. */
export interface UnreadFinding {
  readonly finding: Finding;
  readonly column: UnreadColumn;
}

/** One finding for each column that holds something and was not read. */
export function unreadFindings({ unread }: SheetReading): readonly UnreadFinding[] {
  return unread.map((column) => ({ column, finding: findingOf(column) }));
}

function findingOf({ index, place, header, mayBe, decides }: UnreadColumn): Finding {
  const where = { record: null, field: null, column: index, header, ...(place && { place }) };
  const at = { ...where, values: { mayBe: { either: mayBe.map(fieldName) } } };
  if (decides) {
    return { ...at, rule: "column-may-decide", weight: "error", say: "column-may-decide" };
  }
  const say = mayBe.length > 0 ? "column-may-be" : "column-not-read";
  return { ...at, rule: "column-not-read", weight: "note", say };
}
