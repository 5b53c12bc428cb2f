import type { SentenceId } from "../messages/catalogue";
import type { Values } from "../messages/sentence";
import type { BlockPlace } from "../reading/block-place";
import type { FieldId } from "../reading/fields";

/**
 * What a finding weighs: `void`, the test does not stand; `error`, the record is wrong; `doubt`,
 * look at it; `note`, good to know.
 */
export type Weight = "void" | "error" | "doubt" | "note";
export const WEIGHTS: readonly Weight[] = ["void", "error", "doubt", "note"];

/** What may have led to a finding, such as a slip behind a wrong result; the likelier first. */
export interface Cause {
  /** Plain words with hyphens, as the id of a rule. */
  readonly id: string;
  readonly say: SentenceId;
  readonly values: Values;
}

/** One thing found. Plain data: the words are put on by `findingSentence`, the address by the edge. */
export interface Finding {
  /** Position of the test in the reading, from 0; null for the sheet as a whole. */
  readonly record: number | null;
  readonly field: FieldId | null;
  /** Position of a column that is no field, where the finding is about one. */
  readonly column?: number;
  /** Where that stands in the block, where it is in a form. */
  readonly place?: BlockPlace;
  /** The header of that column. */
  readonly header?: string;
  readonly rule: string;
  readonly weight: Weight;
  readonly say: SentenceId;
  readonly values: Values;
  /** What may have led to it, the likelier first; none where nothing is known. */
  readonly causes?: readonly Cause[];
  /** Positions of the tests that a finding about the sheet as a whole rests on. */
  readonly behind?: readonly number[];
}
