import { say } from "../messages/catalogue";
import { FIELDS } from "./fields";
import type { Finding } from "./rule";
import type { Columns } from "./sheet-context";

/** The sentence for a finding; the column is named by the header that stands in the sheet. */
export function findingSentence({ field, say: id, values }: Finding, columns: Columns): string {
  const where = field === null ? "" : (columns[field]?.header ?? FIELDS[field].label);
  // A sentence about a column that is not in the sheet begins with what follows the colon.
  return say(id, { where, ...values })
    .replace(/^: /, "")
    .replace(/^./, (letter) => letter.toUpperCase());
}
