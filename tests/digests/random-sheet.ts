import type { CellValue } from "../../src/measure/cell-value";
import type { SheetTable } from "../../src/reading/sheet-table";
import { randomTest, type PlainTest } from "../simulation/plain-test";
import { UNITS } from "../simulation/plain-method";
import { Random } from "../simulation/random";
import { COLUMNS, UNREAD, type RowToDraw, type SheetColumn } from "./sheet-columns";

/** A sheet, the limits given with its check, and what it contains. */
export interface RandomSheet extends SheetTable {
  readonly headers: readonly string[];
  readonly low: CellValue;
  readonly high: CellValue;
  readonly tags: ReadonlySet<string>;
}

type Field = keyof typeof COLUMNS;

const FIELDS = Object.keys(COLUMNS) as Field[];
const READINGS: readonly Field[] = ["first", "second", "third", "final"];
const USUAL: readonly Field[] = ["sample", "first", "second", "third", "cups", "alcohol", "air"];

/** Cells that are odd in any column. */
const ODD: readonly CellValue[] = [
  ...[null, "", " ", "-", "n/a", "none recorded", "abc", "void", "12 or so", "1e5", "-0", "1e309"],
  ...[0, -1, 1e9, 1e-9, -0, 0.1 + 0.2, true, false],
  ...[{ error: "#N/A" }, { error: "#DIV/0!" }],
];
const SUMMARY = ["Average", "Total", "Mean", "Std. dev.", "Count"];

/** The same sheet for the same number. */
export function randomSheet(number: number): RandomSheet {
  const random = new Random(number);
  const tags = new Set<string>();
  const columns = randomColumns(random, tags);
  const oddShare = random.one([0, 0.02, 0.1, 0.3]);
  const unit = random.one(UNITS);
  const rows = Array.from({ length: random.whole(1, 6) }, (_, row) => {
    const test = testAt(random, unit);
    if (random.chance(0.03)) {
      tags.add("blank row");
      return columns.map(() => null);
    }
    if (random.chance(0.03)) {
      tags.add("summary row");
      return columns.map((_, i) => (i === 0 ? random.one(SUMMARY) : random.whole(0, 9)));
    }
    return columns.map((column) => drawnCell(column, { random, test, row }, oddShare));
  });
  if (random.chance(0.1) && rows.length > 1) {
    tags.add("row twice");
    rows.push(rows[0]!);
  }
  rows.flat().forEach((cell) => tagCell(cell, tags));
  const limits = random.chance(0.3) ? limitsGiven(random, tags) : { low: null, high: null };
  return { headers: columns.map(({ header }) => header), rows, tags, ...limits };
}

interface HeadedColumn extends SheetColumn {
  readonly header: string;
}

function randomColumns(random: Random, tags: Set<string>): HeadedColumn[] {
  const share = random.one([0.05, 0.2, 0.6]);
  const fields = FIELDS.filter((field) =>
    random.chance(USUAL.includes(field) ? 0.85 : READINGS.includes(field) ? 0.3 : share),
  );
  if (!READINGS.some((field) => fields.includes(field))) tags.add("no readings column");
  for (const field of fields) tags.add(`column ${field}`);
  const columns: SheetColumn[] = fields.map((field) => COLUMNS[field]);
  if (random.chance(0.2)) {
    tags.add("unread column");
    columns.splice(random.whole(0, columns.length), 0, random.one(UNREAD));
  }
  if (random.chance(0.05)) {
    tags.add("field twice");
    columns.push(random.one(columns));
  }
  return columns.map((column) => ({ ...column, header: random.one(column.headers) }));
}

function testAt(random: Random, unit: PlainTest["unit"]): PlainTest {
  const layout = { unit, unitInCell: false, hasFinal: true, hasFactor: false, isFull: false };
  return randomTest(random, layout);
}

function drawnCell(column: SheetColumn, drawn: RowToDraw, oddShare: number): CellValue {
  if (!drawn.random.chance(oddShare)) return column.plausible(drawn);
  return drawn.random.one(column.odd && drawn.random.chance(0.6) ? column.odd : ODD);
}

function limitsGiven(random: Random, tags: Set<string>): Pick<RandomSheet, "low" | "high"> {
  tags.add("limits given");
  return { low: random.one([4.5, 6, null, "4,5", 9]), high: random.one([7.5, 6, null, "7.5 %"]) };
}

/** What a cell can be that somebody may want to treat otherwise one day. */
const TAGS: Readonly<Record<string, (cell: CellValue, written: string) => boolean>> = {
  "off-grid": (cell) => typeof cell === "number" && cell > 0.1 && cell < 15 && cell % 0.25 !== 0,
  "share of one": (cell) => typeof cell === "number" && cell > 0 && cell < 1,
  "many cups": (cell, written) => cell === 12 || cell === 40 || written === "1e5",
  tick: (_, written) => /^[xX✓]$/.test(written),
  "time in figures": (cell) => cell === 366,
  "day number as a limit": (_, written) => written === "1e5",
  "negative number": (cell) => typeof cell === "number" && cell < 0,
  "negative zero": (cell, written) => Object.is(cell, -0) || written === "-0",
  "huge number": (cell) => typeof cell === "number" && cell >= 1e9,
  "beyond a number": (_, written) => written === "1e309",
  "date text": (_, written) => /^\d+[-./]\d+[-./]\d+$|^\d+ [A-Z][a-z]+ \d+$/.test(written),
  "void word": (_, written) => /^void$/i.test(written),
  "decimal comma": (_, written) => /\d,\d/.test(written),
  fraction: (_, written) => /\d\s*\/\s*\d|[¼½¾⅜]/.test(written),
  "unit in cell": (_, written) =>
    /^[\d ./]+ ?(?:oz|pt|L|mL|in|mm|s|min|pcf|°F|%)\.?$/.test(written),
  "other unit in cell": (_, written) => /furlongs|gal$|\bcup$/.test(written),
  word: (_, written) => /^[a-z][a-z ]+$/.test(written),
  "text number": (_, written) => /^\d+(?:\.\d+)?$/.test(written),
  "true or false": (cell) => typeof cell === "boolean",
  error: (cell) => typeof cell === "object" && cell !== null,
  "mark for blank": (_, written) => /^(?: |-|n\/a|none recorded)$/.test(written),
};

function tagCell(cell: CellValue, tags: Set<string>): void {
  const written = typeof cell === "string" ? cell : "";
  for (const [tag, has] of Object.entries(TAGS)) if (has(cell, written)) tags.add(tag);
}
