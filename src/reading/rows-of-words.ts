import { isBlank, quoted, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { faultTold } from "./fault-told";
import { isSummaryRow } from "./summary-row";
import { saidOfTest } from "./testers-word";
import { testsNamedBy, type TestsNamed } from "./tests-named";
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
 * words than any name in that column does, or tells of a fault as no name does.
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
    if (tellsOfAFault(only.text) || saidOfTest(only.text)) return true;
    const words = wordsIn(only.text);
    return words >= fewestIn(only.text) && words > longestName(only.column);
  };
}

/** All texts of a row that holds nothing else, as one: a "Note:" and what follows it may have a cell each. */
function textsOf(row: Row): { readonly column: number; readonly text: string } | undefined {
  const filled = [...row.entries()].filter(([, cell]) => !isBlank(cell));
  const [first] = filled;
  if (!first || isSummaryRow(row)) return undefined;
  if (!filled.every(([, cell]) => typeof cell === "string")) return undefined;
  return { column: first[0], text: filled.map(([, cell]) => cell).join(" ") };
}

/**
 * What rows that hold words and no test say: each is said, and where one tells of something that voids a test, the
 * tests that it may be of are asked about: those that it names, else the one right above it, else all.
 *
 * @param isTest Whether a row holds a test.
 * @param namesOf What a test is known by.
 */
export function rowsOfWords(
  rows: readonly Row[],
  isTest: (row: number) => boolean,
  namesOf: (row: number) => readonly string[],
  headerRow: number,
): UnreadColumn[] {
  const said: UnreadColumn[] = [];
  let quiet = 0;
  let named: ReturnType<typeof testsNamedBy> | undefined;
  const namedBy = () =>
    (named ??= testsNamedBy(
      [...rows.keys()]
        .filter(isTest)
        .flatMap((row) => namesOf(row).map((name) => [row, name] as const)),
    ));
  for (const [row, cells] of rows.entries()) {
    const words = isTest(row) ? undefined : textsOf(cells);
    if (!words) continue;
    const { column, text } = words;
    const at = { index: column, place: { row: headerRow + 1 + row, column }, header: text };
    const touches = testsToldOf(text, row, isTest, namedBy);
    if (touches) {
      said.push(askedOfTests("words-may-void", at, touches));
    } else if (onlyText(cells) && wordsIn(text) >= fewestIn(text) && ++quiet <= MOST_SAID) {
      const because = { say: "row-of-words", values: { title: quoted(text) } } as const;
      said.push({ ...at, mayBe: [], decides: false, because, touches: () => false });
    }
  }
  return said;
}

/** "V = void test" explains a mark, and is of no test. */
const EXPLAINS =
  /^\s*[*†("“]*\s*([\p{L}\p{S}✓✗×]{1,3}|\p{L}+ mark)["”)]*\s*=\s*\S|^\s*(?:legend|key|leyenda|clave|legende|zeichen\w*)\s*[:–-]/u;

/** The tests that a text tells a fault of; `undefined` where it tells of none. */
function testsToldOf(
  text: string,
  row: number,
  isTest: (row: number) => boolean,
  namedBy: () => (text: string) => TestsNamed,
): ((record: number) => boolean) | undefined {
  if (EXPLAINS.test(folded(text))) return undefined;
  const { rows, isOpen, rest } = namedBy()(text);
  // A test that is called "Truck 4" leaves no truck in what is told of it.
  const isTold = tellsOfAFault(text) || tellsOfAFault(rest);
  // "V3 void?" and "void?" may be of the test; "repeat if it is void" is of none.
  const mayBeTold = saidOfTest(text) && (rows.size > 0 || wordsIn(text) < FEWEST_WORDS);
  if (!isTold && !mayBeTold) return undefined;
  if (rows.size > 0) return (record) => rows.has(record);
  const above = row - 1;
  return !isOpen && above >= 0 && isTest(above) ? (record) => record === above : isTest;
}

/** "Note: V2 void, see foreman" begins with no word of the test. */
const BEGINS = /^\s*[\p{L}.]{2,12}\s*:/u;

function tellsOfAFault(text: string): boolean {
  const told = [text, text.replace(BEGINS, "")];
  return told.some((each) => faultTold(each) || saidOfTest(each) === "void");
}
