import type { FieldId } from "./fields";

/** Where a field stands in the sheet. */
export interface ColumnPlace {
  /** Position in the table, from 0. */
  readonly index: number;
  /** The header as it stands in the sheet. */
  readonly header: string;
  /** Unit in the header, as written, such as "oz". */
  readonly unit?: string;
  /** Whether a yes says that all is in order, where the field asks whether something went wrong. */
  readonly opposite?: true;
}

/** Which columns of a sheet were recognised as what. */
export type Columns = Readonly<Partial<Record<FieldId, ColumnPlace>>>;
