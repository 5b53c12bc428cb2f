import { say } from "../messages/catalogue";
import type { Columns } from "../reading/column-place";
import { FIELDS } from "../reading/fields";
import type { Finding } from "./rule";

/** The sentence for a finding; the column is named by the header that stands in the sheet. */
export function findingSentence({ field, say: id, values }: Finding, columns: Columns): string {
  const where = field === null ? "" : (columns[field]?.header ?? FIELDS[field].label);
  // A sentence about a column that is not in the sheet begins with what follows the colon.
  return say(id, { where, ...values })
    .replace(/^: /, "")
    .replace(/^./, (letter) => letter.toUpperCase());
}
