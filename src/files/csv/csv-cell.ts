/** A number as a program writes it into a CSV file; everything else stays the text that it is. */
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
/** The same with a decimal comma; "1,250" stays a text, since it can be read in two ways. */
const NUMBER_WITH_COMMA = /^-?(?:0,\d+|[1-9]\d*,(?!\d{3}$)\d+)$/;

/**
 * What stands in a cell of a CSV file. Programs set cells off by semicolons where the comma is the
 * decimal mark, so there, and only there, it is read as one.
 */
export function csvCell(text: string, delimiter: string): string | number {
  const first = text.charCodeAt(0);
  if ((first < 48 || first > 57) && first !== 45) return text;
  if (NUMBER.test(text)) return Number(text);
  const withComma = delimiter === ";" && NUMBER_WITH_COMMA.test(text);
  return withComma ? Number(text.replace(",", ".")) : text;
}
