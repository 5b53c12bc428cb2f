import { isBlank } from "../measure/cell-value";
import type { BlockPlace } from "./block-place";
import type { Cells } from "./labelled-value";
import { isLabelText } from "./labels";
import type { SheetReading } from "./sheet-reading";
import { languagesOf, understand } from "./words-in-header";

/** A title above the tests that speaks of another method, and where it stands. */
export interface TitleOfAnotherMethod {
  readonly text: string;
  readonly place: BlockPlace;
}

/** More texts in a row are headers or labels with their values. */
const MOST_TEXTS = 2;

/** Of what may say "pressure" the words that can mean nothing else: "type A" may be of a mix. */
const SAYS_PRESSURE = /press|presi|druck|231|152/i;

/**
 * The title above the tests of a block that says pressure, and nothing of the volumetric method; the nearest to
 * the tests that says either counts.
 *
 * @param before The first row of the headers, or of a form.
 * @param isBelowAnother Whether a table stands above: its rows end the search.
 */
export function titleOfAnotherMethod(
  block: Cells,
  before: number,
  isBelowAnother = false,
): TitleOfAnotherMethod | undefined {
  for (let row = before - 1; row >= 0; row--) {
    const filled = [...block[row]!.entries()].filter(([, cell]) => !isBlank(cell));
    if (filled.length > MOST_TEXTS && isBelowAnother) return undefined;
    if (filled.length > MOST_TEXTS) continue;
    const speaks = filled.flatMap(([column, cell]) =>
      isLabelText(cell) ? methodsIn(cell).map((method) => ({ method, column, text: cell })) : [],
    );
    if (speaks.some(({ method }) => method === "volumetric")) return undefined;
    const [found] = speaks;
    if (found) return { text: found.text.trim(), place: { row, column: found.column } };
  }
  return undefined;
}

function methodsIn(text: string): ("volumetric" | "pressure")[] {
  const { words } = understand(text, languagesOf([text]));
  return words.flatMap(({ terms, text }) => {
    if (terms.includes("volumetric")) return ["volumetric"];
    return terms.includes("pressure") && SAYS_PRESSURE.test(text) ? ["pressure"] : [];
  });
}

/** Tests below such a title: unless a column names their method, it is open whether they are of this one. */
export function withTitle(
  read: SheetReading,
  title: TitleOfAnotherMethod | undefined,
): SheetReading {
  if (!title || read.has("method")) return read;
  const { text, place } = title;
  const unread = {
    ...({ index: place.column, place, header: text, mayBe: [], decides: true } as const),
    asks: "title-of-another-method" as const,
    because: { say: "title-of-another-method", values: { title: text } },
    touches: (record: number) => read.records[record]?.blank === false,
  } as const;
  return { ...read, unread: [...read.unread, unread] };
}
