import type { SheetColumn } from "./recognition";

/** Fewer columns have words in common by chance. */
const ENOUGH = 4;

/** A column or two that somebody put beside an export are headed otherwise: one in so many. */
const MOST = 4;

/**
 * Leaves out what all headers say alike, for it tells no column from another: a title over the whole
 * table, and words at the beginning of every header, as exports put there. Words at the beginning of most
 * headers become a title above these, for they tell what these are parts of.
 */
export function withoutCommonWords(written: readonly SheetColumn[]): readonly SheetColumn[] {
  const columns = withoutNumbers(written.map(withoutMark));
  const headed = columns.filter(({ headers }) => headers.some((header) => header.trim() !== ""));
  if (headed.length < ENOUGH) return columns;
  const isCommon = (level: number) => {
    const titles = new Set(
      headed.map(({ headers }) => (headers.length > level + 1 ? headers[level] : "")),
    );
    return titles.size === 1 && !titles.has("");
  };
  let common = 0;
  while (isCommon(common)) common++;
  const left = withPathsAsTitles(
    columns.map(({ headers, cells }) => ({ headers: headers.slice(common), cells })),
  );
  const owns = left.map(({ headers }) => headers.at(-1) ?? "").filter((header) => header !== "");
  const prefix = commonPrefix(owns);
  if (prefix === "") return left;
  const all = owns.filter((header) => !header.startsWith(prefix)).length * MOST <= owns.length;
  return left.map(({ headers, cells }) => {
    const own = headers.at(-1) ?? "";
    if (!own.startsWith(prefix)) return { headers, cells };
    const title = all ? [] : [prefix.replace(/_/g, " ").trim()];
    return { headers: [...headers.slice(0, -1), ...title, own.slice(prefix.length)], cells };
  });
}

/** A colon behind a header, or the star of what has to be filled in. */
const MARK = /\s{0,3}[:*]{1,3}$/;

/** What a spreadsheet or a program calls a column that nobody named. */
const UNNAMED = /^\s*(?:column|columna|colonne|spalte|unnamed:?)\s?\d{1,4}\s*$/i;

function withoutMark(column: SheetColumn): SheetColumn {
  const own = column.headers.at(-1) ?? "";
  const plain = UNNAMED.test(own) ? "" : own.trimEnd().replace(MARK, "");
  return plain === own ? column : { ...column, headers: [...column.headers.slice(0, -1), plain] };
}

/** The number of a column before its header: "3. Ticket", "(4) First reading", "5) Cups". */
const NUMBER = /^\s*(?:\((\d{1,2})\)|(\d{1,2})[.)])(?:\s+(?=\S)|(?=\p{L}))/u;

/** Leaves out the numbers of columns, where most headers have one and they count on from left to right. */
function withoutNumbers(columns: readonly SheetColumn[]): readonly SheetColumn[] {
  const owns = columns.map(({ headers }) => headers.at(-1) ?? "");
  const numbers = owns.flatMap((own) => {
    const [, inBrackets, alone] = NUMBER.exec(own) ?? [];
    return (inBrackets ?? alone) === undefined ? [] : [Number(inBrackets ?? alone)];
  });
  const headed = owns.filter((own) => own.trim() !== "").length;
  const countOn = numbers.every((number, i) => i === 0 || number > numbers[i - 1]!);
  if (numbers.length < ENOUGH || numbers.length * 2 <= headed || !countOn) return columns;
  return columns.map((column) => ({
    ...column,
    headers: [...column.headers.slice(0, -1), (column.headers.at(-1) ?? "").replace(NUMBER, "")],
  }));
}

/** Names such as "air.reading1", which exports give to what they nest. */
const PATH = /^\s*(\p{L}[\p{L}\d_]*(?:\.\p{L}[\p{L}\d_]*)*)\.(\p{L}[\p{L}\d_]+)\s*$/u;

/** Turns what stands before the last dot of such names into titles, where many columns are named so. */
function withPathsAsTitles(columns: readonly SheetColumn[]): readonly SheetColumn[] {
  const pathOf = ({ headers }: SheetColumn) => PATH.exec(headers.at(-1) ?? "");
  if (columns.filter(pathOf).length < ENOUGH) return columns;
  return columns.map((column) => {
    const [, above, own] = pathOf(column) ?? [];
    if (above === undefined || own === undefined || /^(?:id|no|nr)$/i.test(own)) return column;
    const { headers, cells } = column;
    return { headers: [...headers.slice(0, -1), ...above.split("."), own], cells };
  });
}

/** The words of snake_case with which most headers begin, as many as they have in common; "" for none. */
function commonPrefix(headers: readonly string[]): string {
  const often = new Map<string, number>();
  for (const header of headers) {
    for (let end = header.indexOf("_"); end > 0; end = header.indexOf("_", end + 1)) {
      const prefix = header.slice(0, end + 1);
      if (prefix !== header) often.set(prefix, (often.get(prefix) ?? 0) + 1);
    }
  }
  const most = Math.max(0, ...often.values());
  if (most < ENOUGH || most * 2 <= headers.length) return "";
  const prefixes = [...often].filter(([, count]) => count === most).map(([prefix]) => prefix);
  return prefixes.sort((a, b) => b.length - a.length)[0]!;
}
