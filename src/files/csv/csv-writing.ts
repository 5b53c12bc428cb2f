import type { DecimalMark } from "../../measure/number-from-cell";
import { CsvRows } from "./csv-rows";
import { delimiterOf } from "./delimiter";

/** How a CSV file is written. */
export interface CsvWriting {
  readonly delimiter: string;
  /** The sign before its decimals, where its first cells show it. */
  readonly decimal?: DecimalMark;
}

/** Decimals that no thousands can be: "5.25" and "0.125", while "1.250" may be either. */
const DECIMALS = /^-?(?:0([.,])\d+|[1-9]\d*([.,])(?:\d{1,2}|\d{4,}))$/;

/**
 * How a CSV file is written, as its first cells show.
 *
 * @param beginning The first lines of the text; the last of them may be cut off.
 */
export function writingOf(beginning: string): CsvWriting {
  const delimiter = delimiterOf(beginning);
  const rows = new CsvRows(delimiter, Infinity, () => undefined as never);
  let decimal: DecimalMark | undefined;
  for (const cells of rows.take(beginning)) {
    for (const cell of cells) {
      const [, afterZero, mark = afterZero] = DECIMALS.exec(cell) ?? [];
      if (mark === undefined) continue;
      if (decimal !== undefined && decimal !== mark) return { delimiter };
      decimal = mark as DecimalMark;
    }
  }
  return { delimiter, ...(decimal && { decimal }) };
}
