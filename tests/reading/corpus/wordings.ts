import type { FieldId } from "../../../src/reading/fields";

/**
 * Single headers by what they mean, set off by semicolons: a field, a field whose yes is the good answer
 * ("reversed"), or none of ours. Written from the trade's ways of writing before the vocabulary was
 * looked at for them; invented like the rest of the corpus.
 */
export type Wordings = Readonly<
  Partial<Record<FieldId | `${"packed" | "leak"} reversed` | "none", string>>
>;
