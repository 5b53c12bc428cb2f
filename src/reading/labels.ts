import { isBlank, type CellValue } from "../measure/cell-value";
import type { FieldId } from "./fields";
import { recognise } from "./recognise";
import { remembered } from "./remembered";

/** More than this is a sentence, not a label. */
const LONGEST_LABEL = 80;

const said = remembered(
  (headers: readonly string[]) => recognise([{ headers, cells: [] }]).all[0]!,
  (headers) => headers.join("\n"),
);

/** The field that a text says outright, below its titles. */
export function fieldSaidBy(
  cell: CellValue | undefined,
  titles: readonly string[] = [],
): FieldId | undefined {
  if (!isLabelText(cell)) return undefined;
  const found = said([...titles, cell.trim()]);
  return found.state === "read" ? found.field : undefined;
}

/** Whether a text is a label by its words or its colon. */
export function isKnownLabel(cell: CellValue | undefined): boolean {
  if (!isLabelText(cell)) return false;
  const { state } = said([cell.trim()]);
  return state === "read" || state === "asked" || endsWithColon(cell);
}

/** Whether a text ends as labels do. */
export function endsWithColon(cell: CellValue | undefined): boolean {
  return typeof cell === "string" && /:\s*$/.test(cell);
}

/** Whether a cell may be a label: a short text with letters. */
export function isLabelText(cell: CellValue | undefined): cell is string {
  return (
    typeof cell === "string" &&
    cell.length <= LONGEST_LABEL &&
    /\p{L}/u.test(cell) &&
    !isBlank(cell)
  );
}
