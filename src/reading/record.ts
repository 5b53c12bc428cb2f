import type { AggregateSize } from "../measure/aggregate-size";
import type { Issue } from "../measure/issue";
import type { Measured } from "../measure/measured";
import type { AlcoholAmount } from "../methods/volumetric-air/alcohol-correction";
import type { FIELDS, FieldId } from "./fields";

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

/** What was read of a test: a field is absent when its cell is blank, unreadable or not there. */
export type FieldValues = {
  readonly [F in FieldId]?: ReadAs[(typeof FIELDS)[F]["kind"]];
};

/** Cells that hold something that cannot be read as what the field is for. */
export type Unreadable = Readonly<Partial<Record<FieldId, Issue>>>;

/** One test as it was read. */
export interface FieldRecord {
  /** Position in the sheet reading, from 0; in a table that of its row. */
  readonly row: number;
  /** Whether there is no test in it: every cell of a recognised column is blank, or it is a summary. */
  readonly blank: boolean;
  readonly values: FieldValues;
  readonly unreadable: Unreadable;
}
