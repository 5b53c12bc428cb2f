import type { UnitSystem } from "../../measure/unit-system";

/**
 * How far the slump may lie from a nominal one, ASTM C94 (from memory). Up to which nominal slump, and
 * how far, in inches and in millimetres: the standard's own pairs.
 */
export const SLUMP_TOLERANCE_TABLE: Readonly<
  Record<UnitSystem, readonly (readonly [upTo: number, plusMinus: number])[]>
> = {
  us: [
    [2, 0.5],
    [4, 1],
    [Infinity, 1.5],
  ],
  si: [
    [50, 15],
    [100, 25],
    [Infinity, 40],
  ],
};

/**
 * How far the slump may lie above or below a nominal slump.
 *
 * @param nominal in or mm.
 * @returns In the same unit.
 * @see ASTM C94, tolerances in slump (from memory).
 */
export function slumpTolerance(nominal: number, system: UnitSystem): number {
  return SLUMP_TOLERANCE_TABLE[system].find(([upTo]) => nominal <= upTo)![1];
}
