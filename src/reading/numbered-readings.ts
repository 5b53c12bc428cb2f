import type { Term } from "./terms";
import { withWord, type Told } from "./told";

const ORDER: readonly Term[] = ["first", "second", "third"];
const BESIDE: ReadonlySet<Term> = new Set<Term>([
  "meter",
  "volumetric",
  "air",
  "share",
  "of",
  "measured",
]);

/**
 * Columns that are all headed "Reading" hold the readings in the order in which they were taken. A table
 * of the spreadsheet numbers equal headers from the second on: "Reading", "Reading2".
 */
export function numberedReadings(columns: readonly Told[]): readonly Told[] {
  const plain = columns.filter(isPlainReading);
  const [alone] = plain;
  const isNumbered = ({ own }: Told) => own.text.replace(/\s?2$/, "") === alone?.own.text;
  if (plain.length < 2 && !columns.some((column) => column !== alone && isNumbered(column)))
    return columns;
  const titles = new Set(plain.map((column) => titlesOf(column)));
  if (titles.size > 1) return columns;
  return columns.map((column) => {
    const place = plain.indexOf(column);
    if (place < 0) return column;
    return withWord(column, ORDER[place] ?? "further", String(place + 1));
  });
}

function isPlainReading({ own, titles }: Told): boolean {
  const ordered = titles.some(({ words }) =>
    words.some(({ terms }) => ORDER.some((o) => terms.includes(o))),
  );
  return !ordered && isReading({ own });
}

/** Whether a header says "reading" and nothing else. */
function isReading({ own: { words } }: Pick<Told, "own">): boolean {
  const telling = words.filter(({ terms }) => !terms.some((term) => BESIDE.has(term)));
  const rest = telling.filter(({ terms }) => !terms.includes("reading"));
  return telling.length > 0 && rest.length === 0;
}

function titlesOf({ titles }: Told): string {
  return titles.map(({ text }) => text).join(" ");
}
