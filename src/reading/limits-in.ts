import { exact } from "../measure/rounding";
import type { FieldValues } from "./record";

/** Between which limits the air has to lie, %; either may be absent. */
export interface AirLimits {
  readonly low?: number;
  readonly high?: number;
}

/**
 * The limits that a row holds: in its columns of a low and a high one, each of which may hold a whole
 * specification such as "4.5 to 7.5", else in its target, with the tolerance where it names none.
 */
export function limitsIn({
  low,
  high,
  target,
  tolerance,
}: Pick<FieldValues, "low" | "high" | "target" | "tolerance">): AirLimits {
  const aim = tolerance && target?.aim;
  return {
    low:
      low?.low ??
      low?.aim ??
      high?.low ??
      target?.low ??
      (aim === undefined ? undefined : exact(aim - tolerance!.below)),
    high:
      high?.high ??
      high?.aim ??
      low?.high ??
      target?.high ??
      (aim === undefined ? undefined : exact(aim + tolerance!.above)),
  };
}
