import { belowZero, notAboveZero } from "../../measure/bounds";
import { issue, type Issue } from "../../measure/issue";

/** No concrete that can be placed lies outside (our own choice, to catch a slip of the unit). */
const CAN_BE = [0.15, 2] as const;

/**
 * What is wrong with a limit of w/cm that no concrete can have: 45 or 4.5 for 0.45, or the 0 of a formula
 * that points to a blank. The issue `water-cement-limit-cannot-be`.
 */
export function notWaterCement(limit: number): Issue | undefined {
  const [low, high] = CAN_BE;
  if (limit >= low && limit <= high) return undefined;
  return issue("water-cement-limit-cannot-be", { value: limit, low, high });
}

/** The water and the binder of one volume of concrete, in one unit of mass. */
export interface WaterAndCement {
  /** Water that was weighed or metered at the plant. */
  readonly batchWater: number;
  /** Water that the aggregate carried on its surface; below zero where it takes water in. */
  readonly freeMoisture?: number;
  /** Water added on the way or on site. */
  readonly addedWater?: number;
  /** Cement and other cementitious material. */
  readonly cementitious: number;
}

/**
 * Ratio of all water to the cementitious material, with what was added on site.
 *
 * @returns w/cm, or an issue: `below-zero`, `not-above-zero`, `water-cement-cannot-be`.
 * @see Definition of w/cm (common practice); ASTM C94 counts the water of every addition.
 */
export function waterCementRatio(mix: WaterAndCement): number | Issue {
  const { batchWater, freeMoisture = 0, addedWater = 0, cementitious } = mix;
  const wrong =
    belowZero(batchWater, "batch water") ??
    belowZero(addedWater, "added water") ??
    notAboveZero(cementitious, "cementitious");
  if (wrong) return wrong;
  const ratio = (batchWater + freeMoisture + addedWater) / cementitious;
  if (!Number.isFinite(ratio)) return issue("result-beyond-a-cell");
  if (ratio >= CAN_BE[0] && ratio <= CAN_BE[1]) return ratio;
  return issue("water-cement-cannot-be", { ratio: Number(ratio.toPrecision(3)) });
}
