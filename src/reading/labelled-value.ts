import type { CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import type { BlockPlace } from "./block-place";
import type { FieldId } from "./fields";
import { fieldSaidBy, labelAndValue, nameInTitle } from "./labels";

/** A label of a form and the place of the value that it names. */
export interface LabelledValue {
  /** The label as written, with the unit that stands behind the value. */
  readonly text: string;
  /** Titles of the group in which it stands, from the outermost in. */
  readonly titles: readonly string[];
  /** What is equal for labels that mean the same. */
  readonly key: string;
  /** What the label says outright, by its words alone. */
  readonly field?: FieldId;
  readonly label: BlockPlace;
  readonly value: BlockPlace;
  /** Whether it stands once in a row in which every test has a place. */
  readonly ofAll?: true;
  /** Whether nothing says what it is. */
  readonly stray?: true;
}

/** The cells of a block, row by row. */
export type Cells = readonly (readonly CellValue[])[];

/** What stands in the place of a value; what is behind the colon where that is the label's own cell. */
export function cellOf(block: Cells, { label, value }: LabelledValue): CellValue {
  const cell = block[value.row]?.[value.column] ?? null;
  const isOwn = label.row === value.row && label.column === value.column;
  return (isOwn ? (labelAndValue(cell) ?? nameInTitle(cell))?.value : undefined) ?? cell;
}

/** A label with the value that it names. */
export function labelledValue(
  text: string,
  label: BlockPlace,
  value: BlockPlace,
  { unit, titles = [] }: { readonly unit?: string; readonly titles?: readonly string[] } = {},
): LabelledValue {
  const field = fieldSaidBy(text, titles);
  const name = text.trim().replace(/\s*:$/, "");
  const key = field ?? folded([...titles, name].join(" ")).trim();
  return { text: unit ? `${name} (${unit})` : name, titles, key, field, label, value };
}
