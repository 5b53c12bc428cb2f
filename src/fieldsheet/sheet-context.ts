import type { Columns } from "../reading/column-place";
import type { FieldId } from "../reading/fields";

/** What the rules may know about the sheet as a whole. */
export interface SheetContext {
  readonly columns: Columns;
  /** Whether the sheet has a column for the field. */
  has(field: FieldId): boolean;
}
