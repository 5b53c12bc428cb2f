import { isBlank, quoted, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { faultTold } from "./fault-told";
import { isSummaryRow } from "./summary-row";
import { saidOfTest } from "./testers-word";
import { askedOfTests, type UnreadColumn } from "./unread-column";

type Row = readonly CellValue[];

/** A sentence has at least so many words; fewer may be a name. */
const FEWEST_WORDS = 4;
/** So many rows tell what a name looks like. */
const LOOKED_AT = 200;
/** More of them are no remarks between tests; what tells of a void test is said of each all the same. */
const MOST_SAID = 50;

/** What begins or ends as a sentence or an explanation does needs fewer words. */
const IS_SAID = /^\s*[*†(]|\s=\s|\p{L}\.\s*$|\p{L}:\s/u;
const FEWEST_SAID = 2;

const fewestIn = (text: string) => (IS_SAID.test(text) ? FEWEST_SAID : FEWEST_WORDS);
const wordsIn = (text: string) => text.split(/\s+/).filter((word) => /\p{L}/u.test(word)).length;

/** The only cell of a row that holds something, where it is a text. */
function onlyText(row: Row): { readonly column: number; readonly text: string } | undefined {
  let found: { column: number; text: string } | undefined;
  for (const [column, cell] of row.entries()) {
    if (isBlank(cell)) continue;
    if (found || typeof cell !== "string") return undefined;
    found = { column, text: cell };
  }
  return found;
}

/**
 * Says of a row whether it is a sentence between the tests or below them, and no test: its only cell holds more
 * words than any name in that column does.
 */
export function sentencesAmong(rows: readonly Row[]): (row: Row) => boolean {
  const longest = new Map<number, number>();
  const longestName = (column: number) => {
    const known = longest.get(column);
    if (known !== undefined) return known;
    const names = rows
      .slice(0, LOOKED_AT)
      .filter((row) => row.filter((cell) => !isBlank(cell)).length > 1 && !isSummaryRow(row))
      .map((row) => row[column]);
    const most = names.reduce<number>(
      (sum, name) => Math.max(sum, typeof name === "string" ? wordsIn(name) : 0),
      0,
    );
    longest.set(column, most);
    return most;
  };
  return (row) => {
    const only = onlyText(row);
    if (!only) return false;
    const words = wordsIn(only.text);
    return words >= fewestIn(only.text) && words > longestName(only.column);
  };
}

/**
 * What rows that hold words and no test say: each is said, and where one tells of something that voids a test, the
 * tests that it may be of are asked about: those that it names, else the one right above it, else all.
 *
 * @param isTest Whether a row holds a test.
 * @param nameOf What a test is known by.
 */
export function rowsOfWords(
  rows: readonly Row[],
  isTest: (row: number) => boolean,
  nameOf: (row: number) => string | undefined,
  headerRow: number,
): UnreadColumn[] {
  const said: UnreadColumn[] = [];
  let quiet = 0;
  for (const [row, cells] of rows.entries()) {
    const only = isTest(row) ? undefined : onlyText(cells);
    if (!only || wordsIn(only.text) < fewestIn(only.text)) continue;
    const at = {
      index: only.column,
      place: { row: headerRow + 1 + row, column: only.column },
      header: only.text,
    };
    if (tellsOfAFault(only.text)) {
      const touches = testsMeant(only.text, row, rows, isTest, nameOf);
      said.push(askedOfTests("words-may-void", at, touches));
    } else if (++quiet <= MOST_SAID) {
      const because = { say: "row-of-words", values: { title: quoted(only.text) } } as const;
      said.push({ ...at, mayBe: [], decides: false, because, touches: () => false });
    }
  }
  return said;
}

/** "V = void test" explains a mark, and is of no test. */
const EXPLAINS = /\S\s*=\s*\S|^\s*(?:legend|key|leyenda|clave|legende)\b/i;

function tellsOfAFault(text: string): boolean {
  if (EXPLAINS.test(folded(text))) return false;
  return faultTold(text) || saidOfTest(text) === "void";
}

function testsMeant(
  text: string,
  row: number,
  rows: readonly Row[],
  isTest: (row: number) => boolean,
  nameOf: (row: number) => string | undefined,
): (record: number) => boolean {
  const words = new Set(folded(text).split(/[\s,;:.()[\]]+/));
  const named = new Set(
    [...rows.keys()].filter((at) => isTest(at) && words.has(folded(nameOf(at) ?? "").trim())),
  );
  if (named.size > 0) return (record) => named.has(record);
  const above = row - 1;
  return above >= 0 && isTest(above) ? (record) => record === above : isTest;
}
