import { isBlank, type CellValue } from "../measure/cell-value";
import { DECIDING } from "./deciding";
import { READING_FIELDS, type FieldId } from "./fields";
import { recognise } from "./recognise";
import type { KeptColumn, RecognisedColumn, SheetColumn } from "./recognition";
import { testersWordIn } from "./testers-word";

/** Columns beside a table that a blank one sets apart from it and that are not read with it. */
export interface ColumnsApart {
  /** Position of the first and the last of them. */
  readonly from: number;
  readonly to: number;
  /** Whether meter readings stand in them, so that they may be another table of tests. */
  readonly readings: boolean;
}

/** The same with the headers of the first and the last of them. */
export interface HeadedColumnsApart extends ColumnsApart {
  readonly first: string;
  readonly last: string;
}

/**
 * Which columns are set apart from a table of tests by a blank column and are none of its own, such as what
 * formulas make of it, or another table beside it. A blank column alone parts nothing: groups of columns
 * are often written so. Columns behind one are apart where half of them or more are headed like columns of
 * the table, but for those that decide a test and that the table lacks; and where they stand behind it and
 * say nothing that is read.
 *
 * @param columns The columns with their headers and some of their cells.
 * @param rows All rows, to see which columns are blank.
 */
export function columnsApart(
  columns: readonly SheetColumn[],
  rows: readonly (readonly CellValue[])[],
  kept: readonly KeptColumn[] = [],
): readonly ColumnsApart[] {
  const pieces = piecesOf(columns, rows);
  if (pieces.length < 2) return [];
  const recognised = pieces.map(({ from, to }) => ({
    ...{ from, to },
    all: recognise(columns.slice(from, to + 1), kept).all,
  }));
  const table = recognised.find(({ all }) => hasReadings(all));
  if (!table) return [];
  const own = fieldsIn(table.all);
  return recognised.flatMap((piece) => {
    const { from, all } = piece;
    const fields = fieldsIn(all);
    const again = [...fields].filter((field) => own.has(field)).length;
    // What identifies a test stands before it; what was made of it stands behind.
    const isBefore = piece.to < table.from;
    const isLike = again > 0 && (isBefore ? again * 2 > fields.size : again * 2 >= fields.size);
    const belongs =
      !isLike && (isBefore || fields.size > 0 || all.some((column) => speaks(column, from, rows)));
    if (piece === table || belongs) {
      for (const field of fields) own.add(field);
      return [];
    }
    const readings = isTable(fields);
    return runsOf(all, (column) => !decidesOnlyHere(column, own)).map((run) => ({
      ...{ from: from + run.from, to: from + run.to },
      readings,
    }));
  });
}

interface Run {
  readonly from: number;
  readonly to: number;
}

function piecesOf(
  columns: readonly SheetColumn[],
  rows: readonly (readonly CellValue[])[],
): readonly Run[] {
  return runsOf(columns, ({ headers, cells }, index) => {
    const headed = headers.at(-1)?.trim();
    return Boolean(headed) || !cells.every(isBlank) || rows.some((row) => !isBlank(row[index]));
  });
}

/** The stretches of neighbours for which something holds. */
function runsOf<T>(items: readonly T[], holds: (item: T, index: number) => boolean): Run[] {
  const runs: { from: number; to: number }[] = [];
  items.forEach((item, index) => {
    if (!holds(item, index)) return;
    const last = runs.at(-1);
    if (last?.to === index - 1) last.to = index;
    else runs.push({ from: index, to: index });
  });
  return runs;
}

function hasReadings(all: readonly RecognisedColumn[]): boolean {
  const fields = fieldsIn(all);
  return READING_FIELDS.some((field) => fields.has(field));
}

/** Whether a column may decide a test, or somebody wrote in it what does. */
function speaks(
  column: RecognisedColumn,
  from: number,
  rows: readonly (readonly CellValue[])[],
): boolean {
  if (column.state === "unknown" && column.decides) return true;
  const word = testersWordIn(column.header);
  return rows.some((row) => word(row[from + column.index] ?? null) !== undefined);
}

/** A final reading alone is what a formula makes of the others. */
function isTable(fields: ReadonlySet<FieldId>): boolean {
  return fields.has("first") || (fields.has("final") && fields.has("alcohol"));
}

/** What columns are read as, or could be. */
function fieldsIn(all: readonly RecognisedColumn[]): Set<FieldId> {
  return new Set(all.flatMap(fieldsOf));
}

function fieldsOf(column: RecognisedColumn): readonly FieldId[] {
  if (column.state === "read") return [column.field];
  return column.state === "asked" ? column.candidates : [];
}

/** A final reading is left out: beside a table it is what a formula makes of the others. */
function decidesOnlyHere(column: RecognisedColumn, own: ReadonlySet<FieldId>): boolean {
  if (column.because.say === "read-as-kept") return true;
  if (column.state === "unknown") return column.decides;
  return fieldsOf(column).some(
    (field) => field !== "final" && DECIDING.has(field) && !own.has(field),
  );
}
