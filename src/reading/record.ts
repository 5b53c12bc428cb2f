import type { AggregateSize } from "../measure/aggregate-size";
import type { Issue } from "../measure/issue";
import type { Bounded } from "../measure/bounded";
import type { Measured } from "../measure/measured";
import type { Specification, Tolerance } from "../measure/specification";
import type { AlcoholAmount } from "../methods/volumetric-air/alcohol-correction";
import type { FIELDS, FieldId } from "./fields";
import type { TestersWord } from "./testers-word";

/** What a cell of each kind is read as. */
export interface ReadAs {
  number: number;
  /** An air content, %. */
  percent: number;
  /** A number with the unit that was written with it. */
  measured: Measured;
  density: number;
  /** A number of calibrated cups. */
  cups: number;
  /** Divisions of foam, also as more or less than a number of them. */
  foam: Bounded;
  /** Minutes, also as more or less than a number of them. */
  settling: Bounded;
  specification: Specification;
  tolerance: Tolerance;
  /** Minutes, also when written in seconds. */
  minutes: number;
  /** Seconds, also when written in minutes. */
  seconds: number;
  text: string;
  "yes-no": boolean;
  /** Whether something went wrong. */
  fault: boolean;
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

/**
 * What was read of a test: a field is absent when its cell is blank, unreadable or not there. It may be a
 * view of columns: fields are asked for by name.
 */
export type FieldValues = {
  readonly [F in FieldId]?: ReadAs[(typeof FIELDS)[F]["kind"]];
};

/** Cells that hold something that cannot be read as what the field is for. */
export type Unreadable = Readonly<Partial<Record<FieldId, Issue>>>;

/** One test as it was read. */
export interface FieldRecord {
  /** Position in the sheet reading, from 0; in a table that of its row. */
  readonly record: number;
  /** Whether there is no test in it: every cell of a recognised column is blank, or it is a summary. */
  readonly blank: boolean;
  readonly values: FieldValues;
  readonly unreadable: Unreadable;
  /** What somebody wrote of the test as a whole: that it is void, or what may mean that. */
  readonly testersWord?: TestersWord;
}
