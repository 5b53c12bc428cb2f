import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { cellValueFrom, type CellValue } from "../../measure/cell-value";

/** What stands in a cell of the workbench. */
export function contentOf(cell: Nullable<ICellData>): CellValue {
  if (!cell) return null;
  if (cell.p) return textOf(cell.p.body?.dataStream);
  if (cell.t === CellValueType.BOOLEAN) return cell.v === 1 || cell.v === true || cell.v === "TRUE";
  return cellValueFrom(cell.v);
}

/** A cell value as the workbench stores it. Text that begins with "=" stays text. */
export function cellHolding(value: CellValue): ICellData {
  if (value === null) return {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: typeof value === "object" ? value.error : value, t: CellValueType.STRING };
}

/** Text with formats inside ends in a paragraph mark of its own. */
function textOf(stream = ""): string {
  return stream.replace(/\r\n?$/, "").replaceAll("\r", "\n");
}
