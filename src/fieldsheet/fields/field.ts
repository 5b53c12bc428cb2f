/** How the cells of a column are read. */
export type FieldKind =
  | "number"
  | "measured"
  | "tolerance"
  | "minutes"
  | "seconds"
  | "text"
  | "yes-no"
  | "yes-or-amount"
  | "alcohol"
  | "water"
  | "date"
  | "minute-of-day"
  | "aggregate-size";

/** One thing that a field sheet may record. */
export interface Field<K extends FieldKind = FieldKind> {
  readonly kind: K;
  /** What we call it in a sentence and in the pane. */
  readonly label: string;
  /** How people head the column, in lower case; the first is the plainest. */
  readonly headings: readonly string[];
}

/**
 * A field with its headings in one text, set off by commas. The headings are ordinary trade usage
 * ("common practice"), our own selection; a unit or a remark in brackets is taken off before a header
 * is compared with them.
 */
export function field<K extends FieldKind>(kind: K, label: string, headings: string): Field<K> {
  return { kind, label, headings: headings.split(",").map((heading) => heading.trim()) };
}
