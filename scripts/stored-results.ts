import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/**
 * The calculation engine of today's Excel. A file of the same or a newer engine is opened with the
 * results that stand in it; of an older one everything is calculated anew, and without the add-in every
 * cell of it would show `#NAME?`.
 */
const ENGINE = 191029;

/** A fixed day, so that the same workbook is the same file. */
const MADE = new Date(2026, 5, 10, 12);

/**
 * Lets a workbook open with the results that stand in it: nothing is calculated on opening, and cells
 * whose result is an error hold it. The library that writes the workbook can do neither.
 *
 * @param workbook The .xlsx file.
 * @param errors For each sheet, in order: the errors by the addresses of their cells, such as "B2".
 */
export function withStoredResults(
  workbook: Uint8Array,
  errors: readonly ReadonlyMap<string, string>[],
): Uint8Array {
  const parts = unzipSync(workbook);
  const edit = (part: string, change: (xml: string) => string) => {
    parts[part] = strToU8(change(strFromU8(parts[part]!)));
  };
  edit("xl/workbook.xml", (xml) =>
    xml.replace(/<calcPr[^>]*\/>/, `<calcPr calcId="${ENGINE}" calcMode="auto"/>`),
  );
  errors.forEach((ofSheet, i) =>
    edit(`xl/worksheets/sheet${i + 1}.xml`, (xml) => stored(xml, ofSheet)),
  );
  return zipSync(parts, { level: 9, mtime: MADE });
}

/** Puts the errors into their cells, which so far hold a formula and no result. */
function stored(xml: string, errors: ReadonlyMap<string, string>): string {
  const left = new Set(errors.keys());
  const written = xml.replace(
    /<c r="([A-Z]+\d+)"([^>]*)>(<f[^>]*>[^<]*<\/f>)<\/c>/g,
    (cell, address: string, attributes: string, formula: string) => {
      const error = errors.get(address);
      if (!error) return cell;
      left.delete(address);
      return `<c r="${address}"${attributes} t="e">${formula}<v>${error}</v></c>`;
    },
  );
  if (left.size > 0) throw new Error(`No formula for the error in ${[...left].join(", ")}`);
  return written;
}
