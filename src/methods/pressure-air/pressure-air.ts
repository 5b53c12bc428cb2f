import { notAPercentage } from "../../measure/bounds";
import { at, issue, type Issue } from "../../measure/issue";
import { differenceAsShare, percentAsShare } from "../../measure/percent-as-share";
import { exact } from "../../measure/rounding";

/**
 * Air content by the pressure method: gauge reading less the aggregate correction factor.
 *
 * Not for lightweight, slag or very porous aggregate, where it reads too high; the volumetric method
 * is used there (ASTM C231-03 scope; AASHTO re:source, 2015).
 *
 * @param gauge Gauge reading, %.
 * @param factor Aggregate correction factor, %.
 * @returns Air, % of the concrete. The issue `not-a-percentage`, `percent-as-share` or
 *   `pressure-air-below-zero`.
 * @see ASTM C231 / AASHTO T 152, calculation.
 */
export function pressureAir(gauge: number, factor: number): number | Issue {
  const wrong =
    notAPercentage(gauge, "gauge reading") ??
    notAPercentage(factor, "aggregate correction factor") ??
    at("gauge reading", percentAsShare(gauge)) ??
    at("aggregate correction factor", differenceAsShare(factor));
  if (wrong) return wrong;
  const air = exact(gauge - factor);
  return air >= 0 ? air : issue("pressure-air-below-zero", { gauge, factor });
}
