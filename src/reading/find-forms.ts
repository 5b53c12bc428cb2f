import type { CellValue } from "../measure/cell-value";
import { READING_FIELDS, type FieldId } from "./fields";
import { cellOf, type LabelledValue } from "./labelled-value";
import { labelsAndValues } from "./labelled-values";
import { linesAmong, type LineAmongForms } from "./lines-among-forms";
import { recognise } from "./recognise";
import type { BlockPlace } from "./block-place";
import { withUnitsInLabels } from "./units-beside-labels";
import { unitsOf, withoutUnit, withUnit } from "./units-of-forms";

/** Forms as a table: one test a row, one column for what is called alike, and where each value stands. */
export interface FoundForms {
  readonly headers: readonly string[];
  /** For each column the titles of its group from the top down, its own label last. */
  readonly titles: readonly (readonly string[])[];
  /** Where the first label of each column stands. */
  readonly labels: readonly BlockPlace[];
  readonly rows: readonly (readonly CellValue[])[];
  /** Whether they stand in a table, though not one test a row. */
  readonly inTable?: true;
  /** What stands among them and is neither label nor value. */
  readonly lines?: readonly LineAmongForms[];
  /** For each test the place of the value of each column; `undefined` where the test has none. */
  readonly places: readonly (readonly (BlockPlace | undefined)[])[];
}

/** What a test has of its own: it is never taken from a place that several tests share. */
const OWN: ReadonlySet<FieldId> = new Set<FieldId>([...READING_FIELDS, "air", "sample"]);

type Cells = readonly (readonly CellValue[])[];

/** What every test of a form has: a reading, else a result. */
const ANCHORS = ["first", "final", "second", "air"] as const;
const FIELDS_WITHOUT_READING = 4;

/**
 * Finds forms in a block of cells: values with their labels beside or above them, one test or several.
 * Every test has one first reading, or the only one that is taken; what is called alike is told apart by
 * where it stands; and what stands once above or below all tests belongs to each of them.
 *
 * @returns `undefined` where no label of a meter reading, or of a result among other values, has a number.
 */
export function findForms(written: Cells): FoundForms | undefined {
  const block = withUnitsInLabels(written);
  const pairs = withFieldsByValues(block, labelsAndValues(block));
  const anchor = ANCHORS.find((field) =>
    pairs.some((pair) => pair.field === field && isNumeric(block, pair)),
  );
  if (!anchor || (anchor === "air" && !hasEnough(pairs))) return undefined;
  const tests = testsOf(
    pairs,
    pairs.filter(({ field }) => field === anchor),
  );
  return { ...asForms(block, tests), lines: linesAmong(block, pairs) };
}

/** All labels of a block with their values, as one test. */
export function asOneTest(block: Cells): FoundForms {
  return asForms(block, [withFieldsByValues(block, labelsAndValues(block))]);
}

/** Whether a result without a reading stands among other values of a test. */
function hasEnough(pairs: readonly LabelledValue[]): boolean {
  return new Set(pairs.flatMap(({ field }) => field ?? [])).size >= FIELDS_WITHOUT_READING;
}

/** What a label does not say outright may be plain from it and its values together. */
function withFieldsByValues(
  block: Cells,
  pairs: readonly LabelledValue[],
): readonly LabelledValue[] {
  const fieldOf = new Map<string, FieldId | undefined>();
  for (const pair of pairs) {
    const { key, text, titles } = pair;
    if (pair.field || pair.stray || fieldOf.has(key)) continue;
    const alike = pairs.filter((pair) => pair.key === key);
    const cells = alike.map((each) => cellOf(block, each));
    const [found] = recognise([{ headers: [...titles, text], cells }]).all;
    fieldOf.set(key, found?.state === "read" ? found.field : undefined);
  }
  return pairs.map((pair) => {
    const field = pair.field ?? fieldOf.get(pair.key);
    return field ? { ...pair, field, key: field } : pair;
  });
}

function isNumeric(block: Cells, pair: LabelledValue): boolean {
  return /^[\d.,\s]*\d/.test(String(cellOf(block, pair) ?? ""));
}

/** The pairs of each test, in the order in which the tests are read. */
function testsOf(
  pairs: readonly LabelledValue[],
  anchors: readonly LabelledValue[],
): readonly (readonly LabelledValue[])[] {
  if (anchors.length === 1) return [pairs];
  const often = new Map<string, number>();
  for (const { key } of pairs) often.set(key, (often.get(key) ?? 0) + 1);
  const repeated = pairs.filter(({ key }) => often.get(key)! > 1).map(({ value }) => value.row);
  const from = Math.min(...repeated);
  const to = Math.max(...repeated);
  const isShared = ({ key, field, value, ofAll, stray }: LabelledValue) =>
    ofAll ||
    (!stray &&
      often.get(key) === 1 &&
      (value.row < from || value.row > to) &&
      !(field !== undefined && OWN.has(field)));
  const shared = pairs.filter(isShared);
  const own = pairs.filter((pair) => !isShared(pair));
  return bandsOf(own, anchors)
    .flatMap(sideBySide)
    .map((test) => [...shared, ...test]);
}

interface Band {
  readonly pairs: LabelledValue[];
  readonly anchors: readonly LabelledValue[];
}

/** Blocks below one another: a new one begins in the first row in which something comes again. */
function bandsOf(pairs: readonly LabelledValue[], anchors: readonly LabelledValue[]): Band[] {
  const anchorRows = [...new Set(anchors.map(({ value }) => value.row))].sort((a, b) => a - b);
  const rows = [...new Set(pairs.map(({ value }) => value.row))].sort((a, b) => a - b);
  const bands: Band[] = anchorRows.map((row) => ({
    pairs: [],
    anchors: anchors.filter(({ value }) => value.row === row),
  }));
  let band = 0;
  let seen = new Set<string>();
  for (const row of rows) {
    const inRow = pairs.filter(({ value }) => value.row === row);
    const again = inRow.some(({ key }) => seen.has(key));
    if (again && row > anchorRows[band]! && band + 1 < bands.length) {
      band++;
      seen = new Set();
    }
    for (const pair of inRow) {
      seen.add(pair.key);
      bands[band]!.pairs.push(pair);
    }
  }
  return bands;
}

/** Blocks beside one another: each begins where the first of what they all have stands. */
function sideBySide({ pairs, anchors }: Band): readonly (readonly LabelledValue[])[] {
  if (anchors.length === 1) return [pairs];
  const starts = anchors.map(({ value }) => value.column).sort((a, b) => a - b);
  const columnsOf = new Map<string, number[]>();
  for (const { key, value } of pairs) {
    columnsOf.set(key, [...(columnsOf.get(key) ?? []), value.column]);
  }
  for (const columns of columnsOf.values()) {
    if (columns.length !== starts.length) continue;
    columns.sort((a, b) => a - b);
    for (const [i, column] of columns.entries()) starts[i] = Math.min(starts[i]!, column);
  }
  const tests: LabelledValue[][] = starts.map(() => []);
  for (const pair of pairs) {
    const before = starts.filter((start) => start <= pair.value.column).length;
    tests[Math.max(before - 1, 0)]!.push(pair);
  }
  return tests;
}

/** Tests, each with its labels and values, as a table of forms. */
export function asForms(block: Cells, tests: readonly (readonly LabelledValue[])[]): FoundForms {
  const columns = new Map<string, number>();
  const headers: string[] = [];
  const titled: (readonly string[])[] = [];
  const labels: BlockPlace[] = [];
  const filled = tests.map((test) => {
    const times = new Map<string, number>();
    const row: (LabelledValue | undefined)[] = [];
    for (const pair of test) {
      const { key, text, titles, label } = pair;
      const time = (times.get(key) ?? 0) + 1;
      times.set(key, time);
      const name = `${time} ${key}`;
      let column = columns.get(name);
      if (column === undefined) {
        column = headers.length;
        columns.set(name, column);
        headers.push([...titles, text].join(" "));
        titled.push([...titles, text]);
        labels.push(label);
      }
      row[column] = pair;
    }
    return row;
  });
  const all = filled.map((row) => headers.map((_, column) => row[column]));
  const units = headers.map((_, column) => unitsOf(all.map((row) => row[column])));
  const rows = all.map((row) =>
    row.map((pair, column) => (pair ? withUnit(cellOf(block, pair), pair, units[column]!) : null)),
  );
  for (const [column, { differ }] of units.entries()) {
    if (!differ) continue;
    const plain = withoutUnit(headers[column]!);
    headers[column] = plain;
    titled[column] = [...titled[column]!.slice(0, -1), plain];
  }
  const places = all.map((row) => row.map((pair) => pair?.value));
  return { headers, titles: titled, labels, rows, places };
}
