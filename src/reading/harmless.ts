import type { CellValue } from "../measure/cell-value";
import { numberFromCell } from "../measure/number-from-cell";
import type { FieldId } from "./fields";

/** The most of each that voids no test: divisions of foam, minutes to settle (ASTM C173, from memory). */
const VOIDS_ABOVE: Readonly<Partial<Record<FieldId, number>>> = { foam: 2, settle: 6 };

/**
 * Says of a cell whether it decides nothing, whichever of some fields it holds: of 1 nothing hangs on whether it is
 * divisions of foam or minutes to settle, nor of which roll.
 *
 * @param fields What the column may hold.
 */
export function harmlessAs(fields: readonly FieldId[]): (cell: CellValue) => boolean {
  const limits = fields.map((field) => VOIDS_ABOVE[field]);
  if (limits.length === 0 || limits.some((limit) => limit === undefined)) return () => false;
  const most = Math.min(...(limits as number[]));
  return (cell) => {
    const numbers = [numberFromCell(cell), numberFromCell(cell, ",")];
    const read = numbers.find((number) => typeof number === "number");
    return read !== undefined && read >= 0 && read <= most;
  };
}
