import type { Issue } from "../measure/issue";
import type { SentenceId } from "../messages/catalogue";
import type { FieldId } from "../reading/fields";
import type { Unreadable } from "../reading/record";
import type { Refused } from "./judged-test";
import type { RemarkIn } from "./rule";

/**
 * The cells that cannot be read, or whose value the method refuses, for one of some reasons; each
 * with its reason as the remark.
 */
export function unreadableAs<const Says extends readonly SentenceId[]>(
  issues: Unreadable | Refused,
  says: Says,
): (RemarkIn<Says> & { readonly field: FieldId })[] {
  const remarks: { field: FieldId; say: SentenceId; values: Issue["values"] }[] = [];
  for (const field in issues) {
    const issue = issues[field as FieldId];
    if (!issue || !says.includes(issue.id)) continue;
    remarks.push({ field: field as FieldId, say: issue.id, values: issue.values });
  }
  return remarks as never;
}
