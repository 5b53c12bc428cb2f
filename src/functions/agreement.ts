import { agreementLimit, resultsAgree } from "../acceptance/agreement";
import { operatorsFromCell, type Operators } from "../acceptance/operators";
import { number, text, type Argument } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";

const operators = {
  name: "operators",
  optional: true,
  setting: true,
  read: operatorsFromCell,
} as const satisfies Argument<Operators>;
const pair = [
  number("a"),
  number("b"),
  { ...text("method"), setting: true } satisfies Argument<string>,
  operators,
] as const;

/**
 * Whether two results of the same concrete agree: they differ by no more than the published precision of the method allows (d2s). The precision is from memory, to be verified against the standard in force.
 * @customfunction AGREEMENT AGREEMENT
 * @param a One result.
 * @param b The other result.
 * @param method Method of both: "C173", "C231", "C138" (lb/ft³), "C138M" (kg/m³), "C143" (in), "C143M" (mm), "C1064" (°F) or "C1064M" (°C).
 * @param [operators] "one" when one operator made both, else "several"; "several" unless given.
 * @returns TRUE when they agree.
 * @example =FRESH.AGREEMENT(5, 6.9, "C173") gives TRUE [1.9 is not more than 32 % of 5.95, 1.904; from memory, ASTM C173]
 * @example =FRESH.AGREEMENT(142, 144, "C138", "one") gives FALSE [2.0 is more than 1.85 lb/ft³; from memory, ASTM C138]
 */
export function agreementOfResults(
  a: any[][],
  b: any[][],
  method: any[][],
  operators?: any[][],
): any[][] {
  return agreementOf(a, b, method, operators);
}
const agreementOf = cellByCell(pair, resultsAgree);

/**
 * The most by which two results of the same concrete should differ, by the published precision of the method (d2s): for C173, 32 % of their mean. From memory, to be verified against the standard in force.
 * @customfunction AGREEMENT.LIMIT AGREEMENT.LIMIT
 * @param a One result.
 * @param b The other result.
 * @param method Method of both: "C173", "C231", "C138" (lb/ft³), "C138M" (kg/m³), "C143" (in), "C143M" (mm), "C1064" (°F) or "C1064M" (°C).
 * @param [operators] "one" when one operator made both, else "several"; "several" unless given.
 * @returns Limit of the difference, in the unit of the method.
 * @example =FRESH.AGREEMENT.LIMIT(5, 7, "C173") gives 1.92 [32 % of 6.00; from memory, ASTM C173]
 * @example =FRESH.AGREEMENT.LIMIT(142, 144, "C138", "one") gives 1.85 [from memory, ASTM C138]
 */
export function agreementLimitOfResults(
  a: any[][],
  b: any[][],
  method: any[][],
  operators?: any[][],
): any[][] {
  return agreementLimitOf(a, b, method, operators);
}
const agreementLimitOf = cellByCell(pair, agreementLimit);
