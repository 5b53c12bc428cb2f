import { percentage } from "../../measure/bounds";
import { Problem } from "../../measure/problem";
import { exact } from "../../measure/rounding";

/**
 * Air content by the pressure method: gauge reading less the aggregate correction factor.
 *
 * Not for lightweight, slag or very porous aggregate, where it reads too high; the volumetric method
 * is used there (ASTM C231-03 scope; AASHTO re:source, 2015).
 *
 * @param gauge Gauge reading, %.
 * @param factor Aggregate correction factor, %.
 * @returns Air, % of the concrete.
 * @throws Problem `not-a-percentage`, `pressure-air-below-zero`.
 * @see ASTM C231 / AASHTO T 152, calculation.
 */
export function pressureAir(gauge: number, factor: number): number {
  const air = exact(
    percentage(gauge, "gauge reading") - percentage(factor, "aggregate correction factor"),
  );
  if (air < 0) throw new Problem("pressure-air-below-zero", { gauge, factor });
  return air;
}
