import { isBlank, shownValue, type CellValue } from "../measure/cell-value";
import { READING_FIELDS, type FieldId } from "./fields";
import { asForms, type FoundForms } from "./find-forms";
import { isNumber } from "./columns-of-tests";
import { labelledValue, type Cells, type LabelledValue } from "./labelled-value";
import { fieldSaidBy, isLabelText } from "./labels";
import { CELLS_LOOKED_AT } from "./sheet-columns";
import { unitIn } from "./units-row";

/** The header stands in one of the first rows. */
const DEEPEST_HEADER = 30;
/** Shares of the rows that name a field, and that have a value for it. */
const [MOST_NAME_FIELDS, MOST_HAVE_VALUES] = [0.7, 0.6];
/** A remark may be the word of a field, but not most of them. */
const MANY_LABELS = 0.3;
const READINGS: ReadonlySet<FieldId> = new Set<FieldId>(READING_FIELDS);

/** Where things stand in a list of parameters and their values. */
interface ListOfParameters {
  readonly header: number;
  readonly parameter: number;
  readonly value: number;
  readonly unit: number | undefined;
  /** Columns of the test as a whole; the first that is filled names it. */
  readonly others: readonly number[];
}

/**
 * Finds the tests in a list that has a row for each value, as databases write it: what the test is called,
 * what was measured, the value, its unit. However the list is sorted, what has one name is one test, until
 * something comes in it again.
 *
 * @returns `undefined` where the block is no such list, or one of a single test, which is a form as any other.
 */
export function parametersInRows(block: Cells): FoundForms | undefined {
  for (let header = 0; header < Math.min(block.length - 1, DEEPEST_HEADER); header++) {
    const list = listUnder(block, header);
    if (list) return inForms(block, list);
  }
  return undefined;
}

function listUnder(block: Cells, header: number): ListOfParameters | undefined {
  const headers = block[header]!;
  const filled = [...headers.keys()].filter((at) => isLabelText(headers[at]));
  // A line of a form has values beside its labels.
  if (filled.length < 3 || headers.some((cell) => isNumber(cell))) return undefined;
  const rows = block.slice(header + 1, header + 1 + CELLS_LOOKED_AT);
  const parameter = filled.find((at) => namesParameters(rows.map((row) => row[at])));
  if (parameter === undefined) return undefined;
  // "Calibrated cups", "two", "cups" heads no list: it is a line of the form that comes again below.
  const own = headers[parameter];
  const field = fieldSaidBy(own);
  const isAgain = (cell: CellValue | undefined) =>
    cell === own || (field !== undefined && fieldSaidBy(cell) === field);
  if (rows.some((row) => isAgain(row[parameter]))) return undefined;
  const named = rows.filter((row) => !isBlank(row[parameter]));
  const isValue = (at: number) => {
    const cells = named.map((row) => row[at]).filter((cell) => !isBlank(cell));
    return cells.length > named.length * MOST_HAVE_VALUES && cells.some((cell) => isNumber(cell!));
  };
  const value = filled.find((at) => at > parameter && isValue(at));
  if (value === undefined) return undefined;
  const isUnit = (at: number) => {
    const cells = named.map((row) => row[at]).filter((cell) => !isBlank(cell));
    return cells.length > 0 && cells.every((cell) => unitIn(shownValue(cell)) !== undefined);
  };
  const rest = filled.filter((at) => at !== parameter && at !== value);
  const unit = rest.find(isUnit);
  const others = rest.filter((at) => at !== unit);
  // A form in two columns has labels in both; "A1" and "A2" are names of samples.
  const isOfLabels = (at: number) => {
    const labels = named.filter((row) => !READINGS.has(fieldSaidBy(row[at]) ?? "first"));
    return labels.length > named.length * MANY_LABELS;
  };
  if (others.length === 0 || others.some(isOfLabels)) return undefined;
  return { header, parameter, value, unit, others };
}

/** Whether cells say fields, a reading again and again among others. */
function namesParameters(cells: readonly (CellValue | undefined)[]): boolean {
  const filled = cells.filter((cell) => !isBlank(cell));
  const said = filled.flatMap((cell) => fieldSaidBy(cell) ?? []);
  const readings = said.filter((field) => READINGS.has(field));
  // "A1" and "A2" again and again are names of samples.
  const isAgain = readings.length > new Set(readings).size && said.length > readings.length;
  return isAgain && said.length > filled.length * MOST_NAME_FIELDS;
}

function inForms(block: Cells, list: ListOfParameters): FoundForms {
  const { header, parameter, value, unit, others } = list;
  const tests: LabelledValue[][] = [];
  /** The last test of each name: a list may be sorted by what was measured. */
  const named = new Map<string, LabelledValue[]>();
  let name = "";
  for (let row = header + 1; row < block.length; row++) {
    const cells = block[row]!;
    if (isBlank(cells[parameter])) continue;
    name = nameOf(cells, block[header]!, others) || name;
    const measured = unit === undefined ? "" : shownValue(cells[unit]).trim();
    const pair = labelledValue(
      shownValue(cells[parameter]),
      { row, column: parameter },
      { row, column: value },
      measured === "" ? {} : { unit: measured },
    );
    const known = named.get(name);
    const test = known?.every(({ key }) => key !== pair.key) ? known : begun(row);
    test.push(pair);
  }
  return asForms(block, tests);

  /** Another test, with what its first row says of it. */
  function begun(row: number): LabelledValue[] {
    const filled = others.filter((column) => !isBlank(block[row]![column]));
    const test = filled.map((column) => {
      const text = shownValue(block[header]![column]);
      return labelledValue(text, { row: header, column }, { row, column });
    });
    tests.push(test);
    named.set(name, test);
    return test;
  }
}

/** What the rows of a test have in common: its sample or load, else the first of its columns. */
function nameOf(cells: Cells[number], headers: Cells[number], others: readonly number[]): string {
  const isName = (at: number) => ["sample", "load"].includes(fieldSaidBy(headers[at]) ?? "");
  const at = others.find(isName) ?? others[0]!;
  return shownValue(cells[at] ?? null).trim();
}
