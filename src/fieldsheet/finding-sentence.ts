import { quoted } from "../measure/cell-value";
import { say, sentenceOf } from "../messages/catalogue";
import type { Columns } from "../reading/column-place";
import type { Finding } from "./rule";

/**
 * What a finding says, after the header of its column as it stands in the sheet: the sentence of its
 * rule, and then what may have led to it, the likelier first.
 */
export function findingSentence(finding: Finding, columns: Columns): string {
  const { field, say: id, values, causes = [] } = finding;
  const place = field === null ? "" : quoted(columns[field]?.header);
  const because = causes.map((cause, i) => {
    const sentence = sentenceOf(cause.say, cause.values);
    return i === 0 ? sentence : say("or-else", { sentence });
  });
  return [sentenceOf(id, values, place), ...because].join(" ");
}
