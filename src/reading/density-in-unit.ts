import { quoted, type CellValue } from "../measure/cell-value";
import { LB_FT3_PER_KG_M3 } from "../measure/conversion";
import { issue, isIssue, type Issue } from "../measure/issue";
import { measuredFromCell } from "../measure/measured";
import { numberFromCell, type DecimalMark } from "../measure/number-from-cell";
import { canBe, QUANTITIES } from "../measure/plausible";
import { systemNamed } from "../measure/system-of-value";
import { phrase } from "../messages/catalogue";

const { density } = QUANTITIES;

/**
 * Reads a density in the unit of its column: "1840 kg/m³" in a column of lb/ft³ is 114.87.
 *
 * @param header Unit of the column; without one a density says by its size what unit it is in.
 * @returns The density; `undefined` for a blank; an issue of `numberFromCell`, or `two-ways` for "118 kg/m³" in a column of lb/ft³.
 */
export function densityFromCell(
  cell: CellValue,
  header: string | undefined,
  decimal: DecimalMark,
): number | undefined | Issue {
  const plain = numberFromCell(cell, decimal);
  if (!isIssue(plain)) return plain;
  const read = measuredFromCell(cell, undefined, decimal);
  if (read === undefined || isIssue(read) || read.unit === undefined) return plain;
  const { value, unit } = read;
  const system = systemNamed(unit, density);
  if (!system) return plain;
  const ofColumn = header === undefined ? system : (systemNamed(header, density) ?? system);
  if (ofColumn === system) return value;
  if (!canBe(value, density, system)) {
    const inUnit = (unit: string) => phrase("amount-in-unit", { amount: value, unit });
    const [one, other] = [inUnit(density.units[ofColumn]), inUnit(density.units[system])];
    return issue("two-ways", { value: quoted(cell), one, other });
  }
  const converted = system === "si" ? value * LB_FT3_PER_KG_M3 : value / LB_FT3_PER_KG_M3;
  return Number(converted.toFixed(2));
}
