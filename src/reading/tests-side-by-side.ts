import { isBlank, shownValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { READING_FIELDS, type FieldId } from "./fields";
import { asForms, type FoundForms } from "./find-forms";
import { headersByColumn, mayBeOneOfSeveral, mayBeTitles } from "./header-rows";
import { fieldSaidBy, isLine } from "./labels";
import type { LineAmongForms } from "./lines-among-forms";
import { labelledValue, type Cells, type LabelledValue } from "./labelled-value";
import { isNotATestRow } from "./not-a-test-row";
import { recognise } from "./recognise";
import { languagesOf, understand } from "./words-in-header";
import type { Term } from "./terms";
import { CELLS_LOOKED_AT } from "./sheet-columns";

/** Titles stand above few rows. */
const DEEPEST_HEADER = 60;
/** Fewer columns under a title are no test. */
const FEWEST_COLUMNS = 2;

/** Columns under one title. */
interface Group {
  readonly title: string;
  readonly columns: readonly number[];
}

/**
 * Finds the tests of a table that holds several in each row, beside one another under titles of their own,
 * such as "Contractor" and "Agency": below each stand the same headers, a reading among them.
 *
 * @returns One test for each row and title, called by both; `undefined` where every row is one test.
 */
export function testsSideBySide(block: Cells): FoundForms | undefined {
  for (let header = 1; header < Math.min(block.length - 1, DEEPEST_HEADER); header++) {
    const rows = [block[header - 1]!, block[header]!];
    if (!comeTwice(rows[1]!) || !rows.every(mayBeOneOfSeveral) || !mayBeTitles(rows[0]!)) continue;
    const headers = headersByColumn(rows);
    const tested = groupsOf(headers).filter(({ columns }) => columns.length >= FEWEST_COLUMNS);
    const readings = tested.map((group) => readingsOf(group, headers, block.slice(header + 1)));
    const groups = tested.filter((_, at) => readings[at] !== "");
    const alike = new Set(readings.filter((each) => each !== ""));
    if (groups.length >= 2 && alike.size === 1) return inForms(block, header, headers, groups);
  }
  return undefined;
}

function comeTwice(row: Cells[number]): boolean {
  const texts = row.filter((cell) => !isBlank(cell)).map((cell) => folded(shownValue(cell)).trim());
  return new Set(texts).size <= texts.length - FEWEST_COLUMNS;
}

function groupsOf(headers: readonly (readonly string[])[]): readonly Group[] {
  const groups: { title: string; columns: number[] }[] = [];
  for (const [at, [title = "", own = ""]] of headers.entries()) {
    if (title === "" || own === "") continue;
    const last = groups.at(-1);
    if (last?.title === title && last.columns.at(-1) === at - 1) last.columns.push(at);
    else groups.push({ title, columns: [at] });
  }
  return groups;
}

/** "Test 2" and "Sample B" count tests and not readings, where both readings stand below. */
const COUNTS_TESTS: ReadonlySet<Term> = new Set<Term>(["test", "sample", "load", "batch", "truck"]);

/** The readings under a title: "Roll 1" and "Roll 2" have other ones each, and are of one test. */
function readingsOf({ title, columns }: Group, headers: Headers, rows: Cells): string {
  const { words } = understand(title, languagesOf([title]));
  const counts =
    /\d|\p{Lu}$/u.test(title.trim()) &&
    words.some(({ terms }) => terms.some((term) => COUNTS_TESTS.has(term)));
  const some = rows.slice(0, CELLS_LOOKED_AT);
  const found = recognise(
    columns.map((at) => ({
      headers: counts ? headers[at]!.slice(1) : headers[at]!,
      cells: some.map((row) => row[at] ?? null),
    })),
  ).columns;
  const read = READING_FIELDS.filter((field) => found[field]);
  const isTest = Object.keys(found).length >= FEWEST_COLUMNS && (!counts || read.length >= 2);
  return isTest ? read.join() : "";
}

type Headers = readonly (readonly string[])[];

function inForms(
  block: Cells,
  header: number,
  headers: Headers,
  groups: readonly Group[],
): FoundForms {
  // What has no header of its own stands in the row of the titles, as one cell over both rows does.
  const names = headers.map(([title = "", own = ""]) => (own === "" ? title : own));
  const labelRow = (column: number) => (headers[column]![1] === "" ? header - 1 : header);
  const ofTests = new Set(groups.flatMap(({ columns }) => columns));
  const tests: LabelledValue[][] = [];
  const called: string[] = [];
  const lines: LineAmongForms[] = [];
  for (let row = header + 1; row < block.length; row++) {
    const cells = block[row]!;
    if (cells.every(isBlank) || isNotATestRow(cells, names)) continue;
    const [only, another] = [...cells.entries()].filter(([, cell]) => !isBlank(cell));
    if (!another && typeof only![1] === "string" && isLine(only![1])) {
      lines.push({ place: { row, column: only![0] }, text: only![1] });
      continue;
    }
    const pairAt = (column: number, titles: readonly string[] = []) =>
      labelledValue(names[column]!, { row: labelRow(column), column }, { row, column }, { titles });
    const common = names.flatMap((name, column) => {
      if (name.trim() === "" || ofTests.has(column) || isBlank(cells[column])) return [];
      const [title = "", header = ""] = headers[column]!;
      return [pairAt(column, title === "" || header === "" ? [] : [title])];
    });
    for (const { title, columns } of groups) {
      if (columns.every((column) => isBlank(cells[column]))) continue;
      const [column] = columns as [number];
      const own = common.find(({ field }) => field === "sample" || field === "load") ?? common[0];
      const name = own ? shownValue(cells[own.value.column]) : "";
      const ofGroup = columns.find((at) => isName(names[at]!) && !isBlank(cells[at]));
      called.push(ofGroup === undefined ? `${name} ${title}`.trim() : shownValue(cells[ofGroup]));
      const place = { row, column };
      const sample = { ...labelledValue(title, { row: header - 1, column }, place), ...NAMES };
      const others = common.filter(({ field }) => field !== "sample");
      tests.push([sample, ...others, ...columns.map((column) => pairAt(column))]);
    }
  }
  const forms = asForms(block, tests);
  const rows = forms.rows.map((row, at) => [called[at]!, ...row.slice(1)]);
  return { ...forms, rows, lines };
}

const isName = (header: string) => ["sample", "load"].includes(fieldSaidBy(header) ?? "");

/** The title of a test and what its row is called name it. */
const NAMES = { text: "Sample", field: "sample", key: "sample" } as const satisfies {
  text: string;
  field: FieldId;
  key: string;
};
