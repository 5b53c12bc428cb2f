import { exact } from "../../measure/rounding";
import {
  aggregateFactorSubtracted,
  correctionAdded,
  correctionForgotten,
  correctionNotDue,
  unitMistaken,
} from "./correction-slips";
import { cupsCountedTwice, cupsForgotten, cupsSubtracted } from "./cup-slips";
import { likelihoodOf } from "./likelihood";
import { firstReadingUsed, readingsAveraged, recordedFinalUsed } from "./reading-slips";
import type { SlipOutcome, Slip, SlipId } from "./slip";
import { digitsSwapped, roundedToOtherStep } from "./writing-slips";
import type { WrongResult } from "./wrong-result";

/** Every slip that can be told from a result. */
export const SLIPS: readonly Slip[] = [
  correctionForgotten,
  correctionAdded,
  correctionNotDue,
  unitMistaken,
  aggregateFactorSubtracted,
  cupsForgotten,
  cupsCountedTwice,
  cupsSubtracted,
  firstReadingUsed,
  readingsAveraged,
  recordedFinalUsed,
  roundedToOtherStep,
  digitsSwapped,
];

/** A slip that explains a wrong result, with its sentence and what that is filled with. */
export interface Cause extends SlipOutcome {
  readonly slip: SlipId;
}

/**
 * Finds which slips explain a wrong result exactly.
 *
 * @param row What was reported and what the record holds.
 * @returns Every slip that leads to the reported number, the likelier first; none when none does.
 */
export function diagnose(row: WrongResult): Cause[] {
  const causes = SLIPS.flatMap(({ id, gives }): Cause[] => {
    const outcome = gives(row).find(({ air }) => exact(air - row.reported) === 0);
    return outcome ? [{ slip: id, ...outcome }] : [];
  });
  return causes.sort((a, b) => likelihoodOf(a.slip, row) - likelihoodOf(b.slip, row));
}
