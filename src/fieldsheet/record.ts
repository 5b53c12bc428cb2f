import type { AggregateSize } from "../measure/aggregate-size";
import type { CellValue } from "../measure/cell-value";
import type { Measured } from "../measure/measured";
import type { Problem } from "../measure/problem";
import type { AlcoholAmount } from "../methods/volumetric-air/alcohol-correction";
import type { FIELDS, FieldId } from "../reading/fields";

/** What a cell of each kind is read as. */
export interface ReadAs {
  number: number;
  /** A number with the unit that was written with it. */
  measured: Measured;
  /** Half of the range: 1.5 in "±1.5". */
  tolerance: number;
  /** Minutes, also when written in seconds. */
  minutes: number;
  /** Seconds, also when written in minutes. */
  seconds: number;
  text: string;
  "yes-no": boolean;
  /** Whether there was any of something, ticked or given as an amount. */
  "yes-or-amount": boolean;
  alcohol: AlcoholAmount;
  water: AlcoholAmount;
  /** Days, as a spreadsheet counts them. */
  date: number;
  /** Minutes since midnight. */
  "minute-of-day": number;
  "aggregate-size": AggregateSize;
}

/** What was read from a row: a field is absent when its cell is blank, unreadable or not there. */
export type FieldValues = {
  readonly [F in FieldId]?: ReadAs[(typeof FIELDS)[F]["kind"]];
};

/** One row of a field sheet, read. */
export interface FieldRecord {
  /** Position in the table, from 0. */
  readonly row: number;
  /** Whether there is no test in it: every cell of a recognised column is blank, or it is a summary. */
  readonly blank: boolean;
  readonly values: FieldValues;
  /** What stands in the cells. */
  readonly cells: Readonly<Partial<Record<FieldId, CellValue>>>;
  /** Cells that hold something that cannot be read as what the column is for. */
  readonly unreadable: Readonly<Partial<Record<FieldId, Problem>>>;
}
