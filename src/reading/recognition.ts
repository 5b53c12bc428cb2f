import type { CellValue } from "../measure/cell-value";
import type { SentenceId } from "../messages/catalogue";
import type { Values } from "../messages/sentence";
import type { Columns } from "./column-place";
import type { FieldId } from "./fields";
import type { Guard } from "./terms";

/** A column of a sheet as it is handed over. */
export interface SheetColumn {
  /** Titles of its groups from the top down, its own header last. */
  readonly headers: readonly string[];
  /** Its unit, where that stands in a row of units below the headers. */
  readonly unitBelow?: string;
  /** Some or all of its cells; none where only the headers are at hand. */
  readonly cells: readonly CellValue[];
}

/** What a column is taken for by the setup that is kept in the workbook. */
export interface KeptColumn {
  readonly header: string;
  readonly field: FieldId | "not ours";
  readonly unit?: string;
}

/** The reason for what is said of a column: a sentence of the catalogue with its values. */
export interface Because {
  readonly say: SentenceId;
  readonly values: Values;
}

interface OfColumn {
  /** Position in the table, from 0. */
  readonly index: number;
  /** The header as it stands in the sheet; for one without, the title above. */
  readonly header: string;
  readonly because: Because;
}

/** A column that is read as a field. */
export interface ReadColumn extends OfColumn {
  readonly state: "read";
  readonly field: FieldId;
  readonly unit?: string;
  /** Up to 100. */
  readonly score: number;
  /** Whether a yes says that all is in order, where the field asks whether something went wrong. */
  readonly opposite?: true;
}

/** A column that may be one of several fields, or a field that may be one of several columns. */
export interface AskedColumn extends OfColumn {
  readonly state: "asked";
  readonly candidates: readonly FieldId[];
  /** Whether one of them decides a test. */
  readonly decides: boolean;
}

/** A column that holds something and is taken for nothing. */
export interface UnknownColumn extends OfColumn {
  readonly state: "unknown";
  /** What it may be, by its words, unit or cells. */
  readonly mayBe: readonly FieldId[];
  /** Whether one of them decides a test. */
  readonly decides: boolean;
}

/** A column that is none of ours. */
export interface OtherColumn extends OfColumn {
  readonly state: "not ours";
  readonly guard: Guard;
}

/** A column without header and cells, or with a header that says nothing to us and no cells. */
export interface EmptyColumn extends OfColumn {
  readonly state: "empty";
}

export type RecognisedColumn = ReadColumn | AskedColumn | UnknownColumn | OtherColumn | EmptyColumn;

/** What the columns of a sheet were recognised as. */
export interface Recognition {
  /** For every column, in order. */
  readonly all: readonly RecognisedColumn[];
  /** For each field that is read, its column. */
  readonly columns: Columns;
}
