import { exact, roundToStep } from "../../measure/rounding";
import type { MessageValues } from "../../measure/problem";
import { REPORTING_STEP } from "../../methods/volumetric-air/corrected-air";
import type { slipMessages } from "../../messages/english/slips";
import type { WrongResult } from "./wrong-result";

/** The id of a slip, in plain words with hyphens; also the id of its sentence. */
export type SlipId = Exclude<SlipMessageId, "half-rounded-up" | "left-unrounded" | "unexplained">;
type SlipMessageId = keyof typeof slipMessages;

/** A number that a slip leads to, and what its sentence is filled with. */
export interface SlipOutcome {
  /** Air as it would be reported, %. */
  readonly air: number;
  /** The sentence; the one with the slip's own id when left out. */
  readonly say?: SlipMessageId;
  readonly values?: MessageValues;
}

/** One way to get a wrong result from a sound test. */
export interface Slip {
  readonly id: SlipId;
  /** The results that it leads to in this row; none when it cannot happen there. */
  readonly gives: (row: WrongResult) => readonly SlipOutcome[];
}

/** The parts of a result, % air. */
type Parts = Pick<WrongResult, "reading" | "subtracted" | "cups">;

/** Reading less correction plus cups, with some of the three put in place of the row's own. */
export function unrounded(row: Parts, instead: Partial<Parts> = {}): number {
  const { reading, subtracted, cups } = { ...row, ...instead };
  return exact(reading - subtracted + cups);
}

/** The same, rounded as the method reports it. */
export function reportedFrom(row: Parts, instead: Partial<Parts> = {}): number {
  return roundToStep(unrounded(row, instead), REPORTING_STEP);
}
