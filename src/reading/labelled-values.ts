import { isBlank, type CellValue } from "../measure/cell-value";
import { columnsOfTests, isNumber } from "./columns-of-tests";
import { crossTables } from "./cross-tables";
import { DECIDING } from "./deciding";
import type { FieldId } from "./fields";
import { labelledValue, type Cells, type LabelledValue } from "./labelled-value";
import {
  endsWithColon,
  fieldSaidBy,
  isKnownLabel,
  isLabelText,
  labelAndValue,
  saysNothing,
} from "./labels";
import { namesOfTests, withNamesInTitles } from "./names-of-tests";
import { sectionOf } from "./section-titles";
import { strayValues } from "./stray-values";
import { titlesAtTheLeft } from "./titles-at-the-left";
import { unitIn } from "./units-row";

/** A merged label covers so many columns before its value. */
const WIDEST_LABEL = 3;

/** What is known of a block before its rows are looked at. */
interface Surroundings {
  readonly tests: ReadonlyMap<number, readonly number[]>;
  readonly titles: ReturnType<typeof titlesAtTheLeft>;
  readonly isCrossed: (row: number, column: number) => boolean;
}

/**
 * The labels of a form with the places of their values, row by row: beside the label, below it in a
 * row that holds nothing but labels, where a row and a column of labels cross; several beside one label
 * where a reading has several numbers.
 */
export function labelsAndValues(block: Cells): readonly LabelledValue[] {
  const crossed = crossTables(block);
  const inCross = new Set(crossed.places.map(({ row, column }) => `${row} ${column}`));
  const around: Surroundings = {
    tests: columnsOfTests(block),
    titles: titlesAtTheLeft(block),
    isCrossed: (row, column) => inCross.has(`${row} ${column}`),
  };
  const pairs: LabelledValue[] = [...crossed.pairs];
  for (let row = 0; row < block.length; row++) {
    if (!block[row]!.some((_, at) => around.isCrossed(row, at)) && isAboveItsValues(block, row)) {
      for (const [column, cell] of block[row]!.entries()) {
        if (isBlank(cell)) continue;
        pairs.push(labelledValue(String(cell), { row, column }, { row: row + 1, column }));
      }
      row++;
    } else pairs.push(...besideIn(block, row, around));
  }
  // Where rows and columns of labels cross, what stands above a column says what it holds.
  if (crossed.pairs.length === 0) pairs.push(...namesOfTests(block, pairs, around.tests));
  const named = withNamesInTitles(block, pairs);
  return [...named, ...strayValues(block, named, crossed.places)];
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
  const holds = (cells: Cells[number] | undefined, isValue: (cell: CellValue) => boolean) =>
    fields.some(([column]) => !isBlank(cells?.[column]) && isValue(cells![column]!));
  const isNumber = (cell: CellValue) => typeof cell !== "string" || /^\s*\d[^\p{L}]*$/u.test(cell);
  return holds(below, saysNothing) && !holds(block[row + 2], isNumber);
}

/** The labels of a row that have their values beside them. */
function besideIn(block: Cells, row: number, { tests, titles, isCrossed }: Surroundings) {
  const cells = block[row]!;
  const pairs: LabelledValue[] = [];
  const section = sectionOf(block, row);
  for (let column = 0; column < cells.length; column++) {
    const text = cells[column];
    if (!isLabelText(text) || isCrossed(row, column)) continue;
    if (isNameOfTests(block, row, column, tests)) continue;
    if (titles.get(column)?.has(row)) continue;
    const label = { row, column };
    const title = titles.get(column - 1)?.get(row) ?? section;
    const under = title === undefined ? {} : { titles: [title] };
    const inOne = inOneCell(cells, column);
    if (inOne !== undefined) {
      pairs.push(labelledValue(inOne, label, label, under));
      continue;
    }
    const ofTests = tests.get(column);
    if (ofTests) {
      const filled = ofTests.filter((at) => !isBlank(cells[at]));
      const first = labelledValue(text, label, { row, column: filled[0] ?? ofTests[0]! }, under);
      const isOfAll = filled.length === 1 && first.field !== undefined && !isOfOneTest(first.field);
      if (isOfAll) pairs.push({ ...first, ofAll: true });
      else if (filled.length > 0) {
        for (const at of ofTests)
          pairs.push(labelledValue(text, label, { row, column: at }, under));
      }
      const [beside, end] = besideTests(block, row, column, ofTests);
      pairs.push(...beside);
      column = end;
      continue;
    }
    const value = besideLabel(cells, column);
    if (value === undefined) {
      const isTitle = row === 0 && cells.filter((cell) => !isBlank(cell)).length === 1;
      if (!isTitle && fieldSaidBy(text) && column + 1 < cells.length) {
        pairs.push(labelledValue(text, label, { row, column: column + 1 }, under));
      }
      continue;
    }
    const unit = unitBehind(cells, column, value);
    pairs.push(labelledValue(text, label, { row, column: value }, { ...under, unit }));
    column = unit === undefined ? value : value + 1;
  }
  return pairs;
}

/** What begins as a label does. */
const LABEL = /^[^:]*\p{L}[^:]*:/u;

/** The label of a cell that holds its value too, unless a value stands beside it: "Alcohol: isopropyl". */
function inOneCell(cells: readonly CellValue[], column: number): string | undefined {
  const beside = cells[column + 1];
  const isAlone = isBlank(beside) || (typeof beside === "string" && LABEL.test(beside));
  return isAlone ? labelAndValue(cells[column])?.label : undefined;
}

/** Whether a text stands in a row of titles above columns of tests, which begins with a blank. */
function isNameOfTests(
  block: Cells,
  row: number,
  column: number,
  tests: Surroundings["tests"],
): boolean {
  const cells = block[row]!;
  return [...tests].some(
    ([labels, columns]) =>
      column > labels && isBlank(cells[labels]) && columns.every((at) => isLabelText(cells[at])),
  );
}

/** Values beside those of the tests, such as what is specified and the mean, by the titles above them. */
function besideTests(
  block: Cells,
  row: number,
  column: number,
  tests: readonly number[],
): readonly [LabelledValue[], end: number] {
  const cells = block[row]!;
  const label = { row, column };
  const pairs: LabelledValue[] = [];
  const next = cells.findIndex((cell, at) => at > tests.at(-1)! && isLabelText(cell));
  const end = next < 0 ? cells.length : next;
  for (let at = column + 1; at < end; at++) {
    if (tests.includes(at) || isBlank(cells[at])) continue;
    const title = block
      .slice(0, row)
      .map((above) => above[at])
      .filter(isLabelText)
      .at(-1);
    if (title === undefined) continue;
    const titles = [String(cells[column]).trim()];
    pairs.push({ ...labelledValue(title, label, { row, column: at }, { titles }), ofAll: true });
  }
  return [pairs, end - 1];
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
    const cell = cells[at];
    if (isBlank(cell)) continue;
    // The unit of a value that is not there is no value.
    const isUnit = typeof cell === "string" && unitIn(cell) !== undefined;
    return saysNothing(cell) && !isUnit ? at : undefined;
  }
  return undefined;
}

/**
 * The unit that stands in a cell of its own behind a number, or what it counts, as the label says it too:
 * "Calibrated cups", 2, "cups".
 */
function unitBehind(cells: readonly CellValue[], label: number, value: number): string | undefined {
  const unit = cells[value + 1];
  if (typeof unit !== "string") return undefined;
  // "Calibrated cups", "two", "cups" and "Third reading", "not needed", "%" have nothing behind.
  const isInWords = typeof cells[value] === "string" && cells.slice(value + 2).every(isBlank);
  if (!isNumber(cells[value] ?? null) && !isInWords) return undefined;
  const isCounted = isBlank(cells[value + 2]) && fieldSaidBy(unit) === fieldSaidBy(cells[label]);
  return unitIn(unit) ?? (isCounted && isLabelText(unit) ? unit.trim() : undefined);
}
