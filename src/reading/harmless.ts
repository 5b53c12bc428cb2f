import type { CellValue } from "../measure/cell-value";
import { numberFromCell } from "../measure/number-from-cell";
import { folded } from "../measure/folded";
import { DECIDING } from "./deciding";
import type { FieldId } from "./fields";
import { readHeader } from "./units-in-header";

/** The most of each that voids no test: divisions of foam, minutes to settle (ASTM C173, from memory). */
const VOIDS_ABOVE: Readonly<Partial<Record<FieldId, number>>> = { foam: 2, settle: 6 };

/** Units in which these limits are, or in which less is meant by the same number; 1 hour is above one of them. */
const COUNTED_IN = /^(?:%|percent|pct|div|mark|grad|raya|lin|strich|teil|min|s$|sec|seg|sek)/;
const HOURS = /^(?:h|hrs?|hours?|horas?|heures?|std|stunden?)$/;

/**
 * Says of a cell whether it decides nothing, whichever of some fields it holds: of 1 nothing hangs on whether it is
 * divisions of foam or minutes to settle, nor of which roll.
 *
 * @param fields What the column may hold.
 * @param header Its header, with the unit.
 */
export function harmlessAs(
  fields: readonly FieldId[],
  header: string,
): (cell: CellValue) => boolean {
  const limits = fields.filter((field) => DECIDING.has(field)).map((field) => VOIDS_ABOVE[field]);
  const { unit, onlyUnit } = readHeader(header);
  const counted = unit ?? onlyUnit;
  const unitWritten = folded(counted?.unit ?? "");
  if (HOURS.test(unitWritten)) return () => false;
  if (counted?.dimension && !COUNTED_IN.test(unitWritten)) return () => false;
  if (limits.length === 0 || limits.some((limit) => limit === undefined)) return () => false;
  const most = Math.min(...(limits as number[]));
  return (cell) => {
    const numbers = [numberFromCell(cell), numberFromCell(cell, ",")];
    const read = numbers.find((number) => typeof number === "number");
    return read !== undefined && read >= 0 && read <= most;
  };
}
