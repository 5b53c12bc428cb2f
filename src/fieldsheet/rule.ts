import type { MessageValues } from "../measure/problem";
import type { SentenceId } from "../messages/catalogue";
import type { FieldId } from "../reading/fields";
import type { JudgedRow } from "./judged-row";
import type { SheetContext } from "./sheet-context";

/**
 * What a finding weighs: `void`, the test does not stand; `error`, the record is wrong; `doubt`,
 * look at it; `note`, good to know.
 */
export type Weight = "void" | "error" | "doubt" | "note";
export const WEIGHTS: readonly Weight[] = ["void", "error", "doubt", "note"];

/** What a rule says about one row, or about the sheet as a whole when `row` is null. */
export interface Remark {
  /** The cell to point at; null for the row as a whole. */
  readonly field: FieldId | null;
  /** The sentence; the one with the rule's own id when left out. */
  readonly say?: SentenceId;
  readonly values?: MessageValues;
  /** A finding id of its own, such as the slip behind a wrong result; the rule's id when left out. */
  readonly as?: string;
}

/** A remark of a rule that looks across rows. */
export interface RemarkAt extends Remark {
  readonly row: number | null;
}

/** One check of a field sheet. */
export interface Rule {
  /** Plain words with hyphens; also the id of its sentence. */
  readonly id: SentenceId;
  readonly weight: Weight;
  /** Fields that must have a column for the rule to speak at all. */
  readonly needs: readonly FieldId[];
  /** Fields of which one at least must have a column as well. */
  readonly needsOneOf?: readonly FieldId[];
  /** Whether it also looks at a row whose test was made by another method. */
  readonly anyMethod?: true;
  /** What the rule rests on, in our own words, with the source and how far it is trusted. */
  readonly basis: string;
  /** Looks at one row that is not blank. */
  readonly look?: (row: JudgedRow, sheet: SheetContext) => Remark | readonly Remark[] | undefined;
  /** Looks at all rows together, once the state of each test is known. */
  readonly lookAcross?: (rows: readonly JudgedRow[], sheet: SheetContext) => readonly RemarkAt[];
}

/** One thing found. Plain data: the words are put on by `findingSentence`. */
export interface Finding {
  /** Position of the row in the table, from 0; null for the sheet as a whole. */
  readonly row: number | null;
  /** Position of the column in the table, from 0; null where no one cell is meant. */
  readonly column: number | null;
  readonly field: FieldId | null;
  readonly rule: string;
  readonly weight: Weight;
  readonly say: SentenceId;
  readonly values: MessageValues;
}
