/** How the cells of a column are read. */
export type FieldKind =
  | "number"
  | "percent"
  | "measured"
  | "density"
  | "cups"
  | "foam"
  | "settling"
  | "specification"
  | "tolerance"
  | "minutes"
  | "seconds"
  | "text"
  | "yes-no"
  | "fault"
  | "yes-or-amount"
  | "alcohol"
  | "water"
  | "date"
  | "minute-of-day"
  | "aggregate-size";

/** One thing that a field sheet may record. */
export interface Field<K extends FieldKind = FieldKind> {
  readonly kind: K;
}

/** Declares a field. */
export function field<K extends FieldKind>(kind: K): Field<K> {
  return { kind };
}
