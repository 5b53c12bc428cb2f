import type { CsvWriting } from "./csv-writing";

/** A number as a program writes it into a CSV file; everything else stays the text that it is. */
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
/** The same with a decimal comma; "1,250" stays a text, since it can be read in two ways. */
const NUMBER_WITH_COMMA = /^-?(?:0,\d+|[1-9]\d*,(?!\d{3}$)\d+)$/;
/** Thousands where decimals are written with a comma: "1.250". */
const THOUSANDS = /^-?[1-9]\d{0,2}(?:\.\d{3})+$/;

/**
 * What stands in a cell of a CSV file. Programs set cells off by semicolons where the comma is the
 * decimal mark, so there, and only there, it is read as one. "1.250" stays a text where the file writes
 * decimal commas: whoever reads the column tells what it is.
 */
export function csvCell(text: string, { delimiter, decimal }: CsvWriting): string | number {
  const first = text.charCodeAt(0);
  if ((first < 48 || first > 57) && first !== 45) return text;
  if (decimal === "," && THOUSANDS.test(text))
    return delimiter === ";" ? Number(text.replaceAll(".", "")) : text;
  if (NUMBER.test(text)) return Number(text);
  const withComma = delimiter === ";" && NUMBER_WITH_COMMA.test(text);
  return withComma ? Number(text.replace(",", ".")) : text;
}
