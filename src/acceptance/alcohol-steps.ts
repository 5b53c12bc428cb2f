import { exact } from "../measure/rounding";
import {
  TABLE_END,
  type AlcoholAmount,
  type AlcoholUnit,
} from "../methods/volumetric-air/alcohol-correction";

/**
 * One step of alcohol that a lab might be off by: the distance of the table's rows in the lower
 * part, where each unit has a row every half pint.
 */
export const ALCOHOL_STEP: Readonly<Record<AlcoholUnit, number>> = { pt: 0.5, oz: 8, L: 0.2 };

/** Marks of the alcohol measure, at most 4 oz (100 mL) apart (from memory, ASTM C173 apparatus). */
export const MEASURE_MARK: Readonly<Record<AlcoholUnit, number>> = { pt: 0.25, oz: 4, L: 0.1 };

/** An amount by one step less or more; `undefined` below nothing or beyond the table. */
export function alcoholStepsAway(
  { amount, unit }: AlcoholAmount,
  steps: number,
): AlcoholAmount | undefined {
  const moved = exact(amount + steps * ALCOHOL_STEP[unit]);
  return moved < 0 || moved > TABLE_END[unit] ? undefined : { amount: moved, unit };
}

/** Every amount that a mark of the measure stands for, up to the end of the table. */
export function measuredAmounts(unit: AlcoholUnit): readonly number[] {
  const mark = MEASURE_MARK[unit];
  const marks = Math.round(TABLE_END[unit] / mark);
  return Array.from({ length: marks + 1 }, (_, i) => exact(i * mark));
}
