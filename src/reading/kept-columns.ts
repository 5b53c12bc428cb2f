import type { KeptColumn, SheetColumn } from "./recognition";
import { writtenHeaders } from "./told";

/** A text as two of them are compared: letters large or small and spaces aside. */
export function plainly(text: string): string {
  return text.trim().replace(/\s+/g, " ").toLowerCase();
}

/** Where a kept setting names one column of the sheet, by its whole header, it holds for that column. */
export function keptFor(
  columns: readonly SheetColumn[],
  kept: readonly KeptColumn[],
): readonly (KeptColumn | undefined)[] {
  if (kept.length === 0) return [];
  const named = kept.map(columnsNamed(columns));
  return columns.map((_, index) =>
    kept.find((_, i) => named[i]!.length === 1 && named[i]![0] === index),
  );
}

/** A kept setting that holds for no column of the sheet. */
export interface UnfitSetting {
  readonly kept: KeptColumn;
  /** Whether several columns have its header, rather than none. */
  readonly several: boolean;
}

/** The kept settings that do not name exactly one column of the sheet. */
export function unfitSettings(
  columns: readonly SheetColumn[],
  kept: readonly KeptColumn[],
): readonly UnfitSetting[] {
  if (kept.length === 0) return [];
  const named = kept.map(columnsNamed(columns));
  return kept.flatMap((setting, i) =>
    named[i]!.length === 1 ? [] : [{ kept: setting, several: named[i]!.length > 1 }],
  );
}

/** Finds the columns that a setting names: by titles and header together, else by the header alone. */
function columnsNamed(columns: readonly SheetColumn[]): (kept: KeptColumn) => readonly number[] {
  const whole = byName(columns, ({ headers }) => headers.join(" "));
  const own = byName(columns, ({ headers }) => writtenHeaders(headers).at(-1) ?? "");
  return ({ header }) => whole.get(plainly(header)) ?? own.get(plainly(header)) ?? [];
}

function byName(
  columns: readonly SheetColumn[],
  nameOf: (column: SheetColumn) => string,
): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  columns.forEach((column, index) => {
    const name = plainly(nameOf(column));
    found.set(name, [...(found.get(name) ?? []), index]);
  });
  return found;
}
