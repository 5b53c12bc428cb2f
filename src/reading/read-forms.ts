import type { FoundForms } from "./find-forms";
import { toldAmongForms } from "./lines-among-forms";
import { readTableInSteps, type ReadingOptions } from "./read-table";
import type { BlockPlace } from "./block-place";
import type { SheetReading } from "./sheet-reading";

/**
 * Reads forms as a table of tests is read, by the same words and with the same values; only where things
 * stand is of the form.
 */
export function* readFormsInSteps(
  found: FoundForms,
  options: ReadingOptions,
): Generator<number, SheetReading> {
  const { headers, titles, labels, rows, places, inTable, lines = [] } = found;
  const read = yield* readTableInSteps({ headers, titles, rows }, { ...options, headerRow: 0 });
  const placeOf: SheetReading["placeOf"] = (row, field) => {
    const at = field === null ? undefined : read.columns[field]?.index;
    const values = row === null ? labels : (places[row] ?? labels);
    const own = at === undefined ? undefined : (values[at] ?? labels[at]);
    return own ?? firstOf(values) ?? labels[0]!;
  };
  const forms = read.records.filter(({ blank }) => !blank).length;
  const unread = read.unread.map((each) => {
    const place = labels[each.index]!;
    return { ...each, index: place.column, place };
  });
  return {
    ...read,
    unread: [...unread, ...toldAmongForms(read, lines, places)],
    forms,
    inTable,
    labels,
    placeOf,
  };
}

function firstOf(places: readonly (BlockPlace | undefined)[]): BlockPlace | undefined {
  return [...places].filter((place) => place !== undefined).sort((a, b) => a.row - b.row)[0];
}
