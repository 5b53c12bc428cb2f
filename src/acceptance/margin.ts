import { exact } from "../measure/rounding";
import type { SpecLimits } from "./limits";

/**
 * Distance of a result to the nearer limit: above 0 inside, 0 on a limit, negative outside.
 *
 * @param value Result, in the unit of the limits.
 * @param limits Either limit may be absent; without any there is no margin.
 */
export function marginToLimits(value: number, { low, high }: SpecLimits): number | undefined {
  const margins = [
    ...(low === undefined ? [] : [value - low]),
    ...(high === undefined ? [] : [high - value]),
  ];
  return margins.length > 0 ? exact(Math.min(...margins)) : undefined;
}
