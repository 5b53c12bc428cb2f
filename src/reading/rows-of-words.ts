import { isBlank, quoted, shownValue, type CellValue } from "../measure/cell-value";
import { tellsOfAFault, testsToldOf } from "./fault-in-a-line";
import { fieldSaidBy } from "./labels";
import type { SheetReading } from "./sheet-reading";
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
 * words than any name in that column does, or tells of a fault as no name does, or of another test.
 *
 * @param naming Positions of the columns by which tests are called.
 */
export function sentencesAmong(
  rows: readonly Row[],
  naming: readonly number[],
): (row: Row) => boolean {
  const named = namesOnce(() => namesInColumns(rows, naming));
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
    if (tellsOfAnother(only.text, named)) return true;
    const words = wordsIn(only.text);
    return words >= fewestIn(only.text) && words > longestName(only.column);
  };
}

function* namesInColumns(
  rows: readonly Row[],
  columns: readonly number[],
): Generator<[row: number, name: string]> {
  for (const [row, cells] of rows.entries()) {
    const isAlone = cells.filter((cell) => !isBlank(cell)).length < 2;
    if (isAlone) continue;
    for (const column of columns)
      if (!isBlank(cells[column])) yield [row, shownValue(cells[column])];
  }
}

/** "V2 redo" and "V2 +1 cup" tell of the test V2, and are none. */
function tellsOfAnother(text: string, named: (text: string) => TestsNamed): boolean {
  const { rows, rest } = named(text);
  return rows.size > 0 && /\p{L}{2}/u.test(rest);
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
 * @param named The tests that a text names.
 */
export function rowsOfWords(
  rows: readonly Row[],
  isTest: (row: number) => boolean,
  named: (text: string) => TestsNamed,
  headerRow: number,
): UnreadColumn[] {
  const said: UnreadColumn[] = [];
  let quiet = 0;
  const isSaid = (text: string) => wordsIn(text) >= fewestIn(text) || tellsOfAnother(text, named);
  for (const [row, cells] of rows.entries()) {
    const words = isTest(row) ? undefined : textsOf(cells);
    if (!words) continue;
    const { column, text } = words;
    const at = { index: column, place: { row: headerRow + 1 + row, column }, header: text };
    const above = row - 1;
    const touches = testsToldOf(text, named, (isOpen) =>
      !isOpen && above >= 0 && isTest(above) ? (record) => record === above : isTest,
    );
    if (touches) {
      said.push(askedOfTests("words-may-void", at, touches));
    } else if (onlyText(cells) && isSaid(text) && ++quiet <= MOST_SAID) {
      const because = { say: "row-of-words", values: { title: quoted(text) } } as const;
      said.push({ ...at, mayBe: [], decides: false, because, touches: () => false });
    }
  }
  return said;
}

/**
 * The same of what stands above a table: a fault told there is of the tests that it names, else it may be of all.
 */
export function withFaultsToldAbove(
  read: SheetReading,
  head: readonly Row[],
  from: number,
): SheetReading {
  const isTest = (record: number) => read.records[record]?.blank === false;
  const named = namesOnce(function* () {
    for (const { record, blank } of read.records)
      if (!blank) for (const name of namesIn(read, record)) yield [record, name];
  });
  const told = [...head.entries()].flatMap(([row, cells]) =>
    [...cells.entries()].flatMap(([column, cell]) => {
      if (typeof cell !== "string" || isBlank(cell)) return [];
      const isLabel = !isBlank(cells[column + 1]) || wordsIn(cell) < FEWEST_WORDS;
      if (isLabel && fieldSaidBy(cell)) return [];
      const touches = testsToldOf(cell, named, () => isTest);
      const at = { index: column, place: { row: from + row, column }, header: cell };
      return touches ? [askedOfTests("words-may-void", at, touches)] : [];
    }),
  );
  return told.length === 0 ? read : { ...read, unread: [...read.unread, ...told] };
}

function namesIn({ cell, has }: SheetReading, record: number): readonly string[] {
  return (["sample", "load"] as const).flatMap((field) =>
    has(field) ? [shownValue(cell(record, field))] : [],
  );
}

/** Many lines may name tests; what these are called is looked at once, when the first may. */
export function namesOnce(
  names: () => Iterable<readonly [row: number, name: string]>,
): (text: string) => TestsNamed {
  let named: ((text: string) => TestsNamed) | undefined;
  return (text) => (named ??= testsNamedBy(names()))(text);
}
