import type { SheetColumn } from "./recognition";

/** Fewer columns have words in common by chance. */
const ENOUGH = 4;

/**
 * Leaves out what all headers say alike, for it tells no column from another: a title over the whole
 * table, and words at the beginning of every header, as exports put there.
 */
export function withoutCommonWords(columns: readonly SheetColumn[]): readonly SheetColumn[] {
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
  const left = columns.map(({ headers, cells }) => ({ headers: headers.slice(common), cells }));
  const prefix = commonPrefix(
    left.map(({ headers }) => headers.at(-1) ?? "").filter((h) => h !== ""),
  );
  if (prefix === 0) return left;
  return left.map(({ headers, cells }) => ({
    headers: [...headers.slice(0, -1), (headers.at(-1) ?? "").slice(prefix)],
    cells,
  }));
}

/** How many letters all headers begin with, up to the end of a word of snake_case; 0 for none. */
function commonPrefix(headers: readonly string[]): number {
  const [first] = headers;
  if (first === undefined || headers.length < ENOUGH) return 0;
  let same = 0;
  while (same < first.length && headers.every((header) => header[same] === first[same])) same++;
  const end = first.slice(0, same).lastIndexOf("_") + 1;
  return headers.every((header) => header.length > end) ? end : 0;
}
