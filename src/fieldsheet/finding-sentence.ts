import { sentenceOf } from "../messages/catalogue";
import type { Columns } from "../reading/column-place";
import type { Finding } from "./rule";

/** The sentence for a finding, after the header of its column as it stands in the sheet. */
export function findingSentence({ field, say: id, values }: Finding, columns: Columns): string {
  const place = (field !== null && columns[field]?.header) || "";
  return sentenceOf(id, values, place);
}
