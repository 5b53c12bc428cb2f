import { quoted } from "../measure/cell-value";
import { say, sentenceOf } from "../messages/catalogue";
import type { Columns } from "../reading/column-place";
import type { Finding } from "./finding";

/**
 * What a finding says, after the header of its column as it stands in the sheet: the sentence of its
 * rule, and then what may have led to it, the likelier first.
 *
 * @param nameOf How a column that is no field is called, by its position: its letters where these are
 *   known, else its number in the range.
 */
export function findingSentence(
  finding: Finding,
  columns: Columns,
  nameOf: (index: number) => string = (index) => String(index + 1),
): string {
  const { say: id, values, causes = [] } = finding;
  const because = causes.map((cause, i) => {
    const sentence = sentenceOf(cause.say, cause.values);
    return i === 0 ? sentence : say("or-else", { sentence });
  });
  return [sentenceOf(id, values, placeOf(finding, columns, nameOf)), ...because].join(" ");
}

function placeOf(
  { field, column, header = "" }: Finding,
  columns: Columns,
  nameOf: (index: number) => string,
): string {
  if (column === undefined) return field === null ? "" : quoted(columns[field]?.header);
  const name = nameOf(column);
  return header === ""
    ? say("column-named", { column: name })
    : say("column-headed", { column: name, header: quoted(header) });
}
