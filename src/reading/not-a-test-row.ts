import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { isSummaryRow } from "./summary-row";
import { isUnitsRow } from "./units-row";

/** Words that begin what people write below a table. */
const WRITTEN_BELOW = new RegExp(
  `^(?:${[
    "remarks?|notes?|comments?|signature|signed|tested by|checked by|reviewed by|approved by|prepared by",
    "technician|inspector|certified|distribution|page|end of|legend|key|weather|specification",
    "observacion(?:es)?|notas?|comentarios?|firma|elaboro|reviso|aprobo|laboratorista|tecnico|pagina",
    "remarques?|observations?|commentaires?|signature|verifie par|approuve par|technicien|prepare par",
    "bemerkung(?:en)?|anmerkung(?:en)?|unterschrift|hinweise?|gepruft|prufer|seite|freigabe",
  ].join("|")})\\b`,
);

/**
 * Whether a row below the header holds no test: it sums up the tests above it, repeats the header, holds
 * the units, or is a remark or a signature.
 *
 * @param row The cells of the row.
 * @param headers The headers of the table, over the same columns.
 */
export function isNotATestRow(row: readonly CellValue[], headers: readonly string[]): boolean {
  const at = row.findIndex((cell) => !isBlank(cell));
  const first = row[at];
  // Most rows are tests and begin with a number or a name.
  if (typeof first !== "string") return false;
  const asHeaded = first.length === headers[at]?.length || first.trim() === headers[at]?.trim();
  return (
    isSummaryRow(row) ||
    (asHeaded && repeatsHeader(row, headers)) ||
    isWrittenBelow(row) ||
    isUnitsRow(row)
  );
}

/** Whether most cells of a row say what the header of their column says, as on paper of many pages. */
function repeatsHeader(row: readonly CellValue[], headers: readonly string[]): boolean {
  const filled = row.flatMap((cell, at) => (isBlank(cell) ? [] : [{ cell, header: headers[at] }]));
  const same = filled.filter(
    ({ cell, header }) =>
      typeof cell === "string" &&
      header !== undefined &&
      header.trim() !== "" &&
      folded(cell.slice(0, 200)).trim() === folded(header.slice(0, 200)).trim(),
  );
  return same.length >= 2 && same.length * 2 > filled.length;
}

/**
 * Whether a row says nothing but what stands above the headers, on the next page again.
 *
 * @param titles For each column the titles above its header.
 */
export function repeatsTitles(
  row: readonly CellValue[],
  titles: readonly (readonly string[])[],
): boolean {
  const filled = [...row.entries()].filter(([, cell]) => !isBlank(cell));
  return filled.every(([at, cell]) => {
    if (typeof cell !== "string") return false;
    return titles[at]?.some((title) => folded(title).trim() === folded(cell).trim()) ?? false;
  });
}

/** Whether a row is one or two texts, the first of which begins as remarks and signatures do. */
function isWrittenBelow(row: readonly CellValue[]): boolean {
  const filled: CellValue[] = [];
  for (const cell of row) {
    if (isBlank(cell)) continue;
    if (filled.length === 2) return false;
    filled.push(cell);
  }
  const [first] = filled;
  if (typeof first !== "string" || filled.length > 2) return false;
  if (filled.some((cell) => typeof cell !== "string")) return false;
  return WRITTEN_BELOW.test(folded(shownValue(first).slice(0, 60)).trim());
}
