import type { CellValue } from "../measure/cell-value";
import type { Problem } from "../measure/problem";
import type { AlcoholAmount } from "../methods/volumetric-air/alcohol-correction";
import type { FIELDS, FieldId } from "./fields";

/** What a cell of each kind is read as. */
interface ReadAs {
  number: number;
  /** Minutes; a column headed in seconds is turned into minutes. */
  minutes: number;
  text: string;
  "yes-no": boolean;
  alcohol: AlcoholAmount;
  /** Days, as a spreadsheet counts them. */
  date: number;
  /** Minutes since midnight. */
  "minute-of-day": number;
}

/** What was read from a row: a field is absent when its cell is blank, unreadable or not there. */
export type FieldValues = {
  readonly [F in FieldId]?: ReadAs[(typeof FIELDS)[F]["kind"]];
};

/** One row of a field sheet, read. */
export interface FieldRecord {
  /** Position in the table, from 0. */
  readonly row: number;
  /** Whether every cell is blank. */
  readonly blank: boolean;
  readonly values: FieldValues;
  /** What stands in the cells. */
  readonly cells: Readonly<Partial<Record<FieldId, CellValue>>>;
  /** Cells that hold something that cannot be read as what the column is for. */
  readonly unreadable: Readonly<Partial<Record<FieldId, Problem>>>;
}
