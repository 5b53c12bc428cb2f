import { isBlank, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { yesOrNoFromCell } from "../measure/words-from-cell";
import { DECIDING } from "./deciding";
import { READING_FIELDS, type FieldId } from "./fields";
import { recognise } from "./recognise";
import { remembered } from "./remembered";
import type { BlockPlace } from "./block-place";
import { testersWordIn } from "./testers-word";
import { readHeader } from "./units-in-header";

/** A label of a form and the place of the value that it names. */
export interface LabelledValue {
  /** The label as written, with the unit that stands behind the value. */
  readonly text: string;
  /** What is equal for labels that mean the same. */
  readonly key: string;
  /** What the label says outright, by its words alone. */
  readonly field?: FieldId;
  readonly label: BlockPlace;
  readonly value: BlockPlace;
  /** Whether it stands once in a row in which every test has a place. */
  readonly ofAll?: true;
  /** Whether nothing says what it is. */
  readonly stray?: true;
}

/** More than this is a sentence, not a label. */
const LONGEST_LABEL = 80;
/** A merged label covers so many columns before its value. */
const WIDEST_LABEL = 3;

type Cells = readonly (readonly CellValue[])[];

const said = remembered(
  (text: string) => recognise([{ headers: [text], cells: [] }]).all[0]!,
  (text) => text,
);

/** The field that a text says outright. */
export function fieldSaidBy(cell: CellValue | undefined): FieldId | undefined {
  if (!isLabelText(cell)) return undefined;
  const found = said(cell.trim());
  return found.state === "read" ? found.field : undefined;
}

/** Whether a text is a label by its words or its colon. */
export function isKnownLabel(cell: CellValue | undefined): boolean {
  if (!isLabelText(cell)) return false;
  const { state } = said(cell.trim());
  return state === "read" || state === "asked" || endsWithColon(cell);
}

function endsWithColon(cell: CellValue | undefined): boolean {
  return typeof cell === "string" && /:\s*$/.test(cell);
}

function isLabelText(cell: CellValue | undefined): cell is string {
  return (
    typeof cell === "string" &&
    cell.length <= LONGEST_LABEL &&
    /\p{L}/u.test(cell) &&
    !isBlank(cell)
  );
}

/**
 * The labels of a form with the places of their values, row by row: beside the label, or below it in a
 * row that holds nothing but labels; several beside one label where a reading has several numbers.
 */
export function labelsAndValues(block: Cells): readonly LabelledValue[] {
  const pairs: LabelledValue[] = [];
  const testColumns = columnsOfTests(block);
  for (let row = 0; row < block.length; row++) {
    if (isAboveItsValues(block, row)) {
      for (const [column, cell] of block[row]!.entries()) {
        if (isBlank(cell)) continue;
        pairs.push(pairOf(String(cell), { row, column }, { row: row + 1, column }));
      }
      row++;
    } else pairs.push(...besideIn(block, row, testColumns));
  }
  return [...pairs, ...strayIn(block, pairs)];
}

/** Numbers, ticks and words of a void test without a label, which are not passed over. */
function strayIn(block: Cells, pairs: readonly LabelledValue[]): LabelledValue[] {
  const nameOf = ({ row, column }: BlockPlace) => `${row} ${column}`;
  const used = new Set(pairs.flatMap(({ label, value }) => [nameOf(label), nameOf(value)]));
  const labels = new Set(pairs.map(({ label }) => nameOf(label)));
  const isLineNumber = lineNumbersIn(block, (place) => labels.has(nameOf(place)));
  return block.flatMap((cells, row) =>
    cells.flatMap((cell, column): LabelledValue[] => {
      const place = { row, column };
      if (isLineNumber(column) && labels.has(nameOf({ row, column: column + 1 }))) return [];
      if (isBlank(cell) || used.has(nameOf(place)) || !saysSomething(cell)) return [];
      return [{ text: "", key: `stray ${nameOf(place)}`, label: place, value: place, stray: true }];
    }),
  );
}

/** Says which columns hold nothing but numbers that rise by one from label to label to their right. */
function lineNumbersIn(
  block: Cells,
  isLabel: (place: BlockPlace) => boolean,
): (column: number) => boolean {
  const columns = (block[0] ?? []).map((_, column) => {
    const numbers = block.flatMap((cells, row) =>
      isLabel({ row, column: column + 1 }) && !isBlank(cells[column])
        ? [Number(cells[column])]
        : [],
    );
    return numbers.length > 2 && numbers.every((number, i) => number === numbers[0]! + i);
  });
  return (column) => columns[column] ?? false;
}

const wordIn = testersWordIn("");

function saysSomething(cell: CellValue): boolean {
  if (typeof cell !== "string") return true;
  return wordIn(cell) !== undefined || typeof yesOrNoFromCell(cell) === "boolean";
}

function pairOf(text: string, label: BlockPlace, value: BlockPlace, unit?: string): LabelledValue {
  const field = fieldSaidBy(text);
  const name = text.trim().replace(/\s*:$/, "");
  const key = field ?? folded(name).trim();
  return { text: unit ? `${name} (${unit})` : name, key, field, label, value };
}

/** Whether a row is labels only, with one row of values below it. */
function isAboveItsValues(block: Cells, row: number): boolean {
  const filled = [...block[row]!.entries()].filter(([, cell]) => !isBlank(cell));
  if (filled.length === 0 || !filled.every(([, cell]) => isLabelText(cell))) return false;
  const fields = filled.filter(([, cell]) => fieldSaidBy(cell));
  if (fields.length === 0 || fields.length * 2 < filled.length) return false;
  const below = block[row + 1];
  if (!below || filled.some(([column]) => isKnownLabel(below[column]))) return false;
  const besides = filled.some(([column, cell]) => {
    const next = block[row]![column + 1];
    return endsWithColon(cell) && !isBlank(next) && !endsWithColon(next);
  });
  if (besides) return false;
  if (filled.length === 1) {
    // A title stands over more than one cell.
    const alone = below.filter((cell) => !isBlank(cell)).length === 1;
    return alone && typeof below[filled[0]![0]] === "number";
  }
  const isFilled = (cells: Cells[number] | undefined) =>
    fields.some(([column]) => !isBlank(cells?.[column]) && !isKnownLabel(cells?.[column]));
  return isFilled(below) && !isFilled(block[row + 2]);
}

/** The labels of a row that have their values beside them. */
function besideIn(
  block: Cells,
  row: number,
  testColumns: ReadonlyMap<number, readonly number[]>,
): LabelledValue[] {
  const cells = block[row]!;
  const pairs: LabelledValue[] = [];
  for (let column = 0; column < cells.length; column++) {
    const text = cells[column];
    if (!isLabelText(text)) continue;
    const label = { row, column };
    const tests = testColumns.get(column);
    if (tests) {
      const filled = tests.filter((at) => !isBlank(cells[at]));
      const first = pairOf(text, label, { row, column: filled[0] ?? tests[0]! });
      const isOfAll = filled.length === 1 && !(first.field && isOfOneTest(first.field));
      if (isOfAll) pairs.push({ ...first, ofAll: true });
      else if (filled.length > 0) {
        for (const at of tests) pairs.push(pairOf(text, label, { row, column: at }));
      }
      column = tests.at(-1)!;
      continue;
    }
    const value = besideLabel(cells, column);
    if (value === undefined) {
      if (fieldSaidBy(text) && column + 1 < cells.length) {
        pairs.push(pairOf(text, label, { row, column: column + 1 }));
      }
      continue;
    }
    const unit = unitBehind(cells, value);
    pairs.push(pairOf(text, label, { row, column: value }, unit));
    column = unit === undefined ? value : value + 1;
  }
  return pairs;
}

function isOfOneTest(field: FieldId): boolean {
  return DECIDING.has(field) || field === "air" || field === "sample" || field === "load";
}

/** The column of the value beside a label: the next cell, or behind the blank cells of a merged one. */
function besideLabel(cells: readonly CellValue[], column: number): number | undefined {
  if (!isBlank(cells[column + 1])) return column + 1;
  const known = fieldSaidBy(cells[column]) !== undefined || endsWithColon(cells[column]);
  if (!known) return undefined;
  for (let at = column + 2; at <= column + WIDEST_LABEL; at++) {
    if (isBlank(cells[at])) continue;
    return isLabelText(cells[at]) ? undefined : at;
  }
  return undefined;
}

/** The unit that stands in a cell of its own behind a number. */
function unitBehind(cells: readonly CellValue[], value: number): string | undefined {
  const unit = cells[value + 1];
  if (typeof cells[value] !== "number" || typeof unit !== "string") return undefined;
  const { tokens, unit: found } = readHeader(`value (${unit.trim()})`);
  return found?.dimension && tokens.length === 1 ? unit.trim() : undefined;
}

/**
 * For a column of labels the columns of its tests, where a label of a reading has numbers in two
 * columns or more up to the next text.
 */
function columnsOfTests(block: Cells): ReadonlyMap<number, readonly number[]> {
  const tests = new Map<number, Set<number>>();
  for (const cells of block) {
    for (const [column, cell] of cells.entries()) {
      const field = fieldSaidBy(cell);
      if (!field || !READING_FIELDS.some((reading) => reading === field)) continue;
      const end = cells.findIndex((other, at) => at > column && isLabelText(other));
      const until = end < 0 ? cells.length : end;
      const numbers = [...cells.entries()]
        .filter(([at, value]) => at > column && at < until && typeof value === "number")
        .map(([at]) => at);
      if (numbers.length < 2) continue;
      const known = tests.get(column) ?? new Set<number>();
      numbers.forEach((at) => known.add(at));
      tests.set(column, known);
    }
  }
  return new Map([...tests].map(([column, set]) => [column, [...set].sort((a, b) => a - b)]));
}
