import { minutesAsClock, minutesAsSeconds } from "../../measure/duration";
import { at, issue, unavailable, type Issue } from "../../measure/issue";
import { percentAsShare } from "../../measure/percent-as-share";
import { exact } from "../../measure/rounding";
import { readingsAgree } from "./meter-reading";

/** A level that changes no more than a graduation in this many minutes has settled. */
export const STEADY_MINUTES = 2;

/** A level that takes longer than this many minutes to settle makes the test void. */
export const SETTLE_WITHIN_MINUTES = 6;

/** One level on the neck and when it was seen. */
export interface LevelAtMinute {
  /** Minutes since the rolling ended. */
  readonly minute: number;
  /** Level, % of the bowl. */
  readonly level: number;
}

/**
 * The first recorded minute at which the level counts as settled.
 *
 * A level at minute t has settled when some level was recorded at least two minutes before t and
 * every level recorded from then up to t lies within 0.25 % of it.
 *
 * @param levels Levels in the order of their minutes.
 * @returns The minute, 6 at most. The issue `minutes-out-of-order`, `minutes-negative`,
 *   `minutes-as-clock`, `two-ways` or `percent-as-share`;
 *   `level-not-settled` when it is not settled by minute 6; `level-not-yet-known` when the record ends
 *   before that.
 * @see The operating manual of a meter maker (2019), describing ASTM C173.
 */
export function settledMinute(levels: readonly LevelAtMinute[]): number | Issue {
  const wrong = cannotBe(levels) ?? notInOrder(levels);
  if (wrong) return wrong;
  const inTime = levels.filter(({ minute }) => minute <= SETTLE_WITHIN_MINUTES);
  for (const at of inTime) {
    if (hasSettled(inTime, at)) return at.minute;
  }
  const last = levels.at(-1)?.minute ?? 0;
  return last >= SETTLE_WITHIN_MINUTES
    ? unavailable("level-not-settled")
    : unavailable("level-not-yet-known", { minute: last });
}

function hasSettled(levels: readonly LevelAtMinute[], at: LevelAtMinute): boolean {
  const upTo = levels.filter(({ minute }) => minute <= at.minute);
  return upTo.some(
    (start, i) =>
      exact(at.minute - start.minute) >= STEADY_MINUTES &&
      upTo.slice(i).every(({ level }) => readingsAgree(level, start.level)),
  );
}

/** Times of day or seconds in place of minutes, shares of one in place of percent. */
function cannotBe(levels: readonly LevelAtMinute[]): Issue | undefined {
  const last = levels.at(-1)?.minute ?? 0;
  return (
    at("minutes", minutesAsClock(last) ?? minutesAsSeconds(last)) ??
    at("levels", percentAsShare(...levels.map(({ level }) => level)))
  );
}

function notInOrder(levels: readonly LevelAtMinute[]): Issue | undefined {
  for (const [i, { minute }] of levels.entries()) {
    if (minute < 0) return issue("minutes-negative", { value: minute });
    const before = levels[i - 1]?.minute;
    if (before !== undefined && minute <= before) {
      return issue("minutes-out-of-order", { value: minute, before });
    }
  }
  return undefined;
}
