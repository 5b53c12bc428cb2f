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
 * A table of the spreadsheet numbers equal headers from the second on: "Reading", "Reading2". The one
 * without a number is then the first. Columns that are headed alike are left as they are: which of them
 * was taken first nothing says.
 */
export function numberedReadings(columns: readonly Told[]): readonly Told[] {
  const [alone, ...others] = columns.filter(isPlainReading);
  const isNumbered = ({ own }: Told) => own.text.replace(/\s?2$/, "") === alone?.own.text;
  if (others.length > 0 || !columns.some((column) => column !== alone && isNumbered(column)))
    return columns;
  return columns.map((column) => (column === alone ? withWord(column, "first", "1") : column));
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
