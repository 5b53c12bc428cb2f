import type { CellValue } from "../measure/cell-value";
import type { LabelledValue } from "./labelled-value";
import { readHeader } from "./units-in-header";

/** Whether labels that mean the same have other units, "Alcohol, pt" in one form and "Alcohol, oz" in the next. */
export function unitsOf(pairs: readonly (LabelledValue | undefined)[]): {
  readonly differ: boolean;
} {
  const texts = new Set(pairs.flatMap((pair) => pair?.text ?? []));
  if (texts.size < 2) return { differ: false };
  const units = new Set([...texts].map((text) => readHeader(text).unit?.unit ?? ""));
  return { differ: units.size > 1 };
}

/** Where units differ, each number is written with its own. */
export function withUnit(
  cell: CellValue,
  { text }: LabelledValue,
  { differ }: { differ: boolean },
): CellValue {
  const unit = differ ? readHeader(text).unit?.unit : undefined;
  const isAmount =
    typeof cell === "number" || (typeof cell === "string" && /^[\d.,\s/]+$/.test(cell));
  return unit !== undefined && isAmount ? `${String(cell)} ${unit}` : cell;
}

/** A label without its unit, where each number has its own. */
export function withoutUnit(header: string): string {
  const words = readHeader(header).tokens.map(({ text }) => text);
  return words.length > 0 ? words.join(" ") : header;
}
