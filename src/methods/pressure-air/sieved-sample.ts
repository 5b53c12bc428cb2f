import { belowZero, notAboveZero, notAPercentage } from "../../measure/bounds";
import { at, issue, type Issue } from "../../measure/issue";
import { percentAsShare } from "../../measure/percent-as-share";

/**
 * Air content of the full mixture from a test on the part that passes the sieve.
 *
 * All volumes are without air, for one batch, in one unit; the full mixture is the part that passes
 * and the coarse aggregate that does not.
 *
 * @param sievedAir Air found in the sieved sample, %.
 * @param passing Volume of the ingredients that pass the sieve.
 * @param coarse Volume of the aggregate kept on the sieve.
 * @returns Air, % of the full mixture. The issue `not-a-percentage`, `percent-as-share`,
 *   `not-above-zero` or `below-zero`.
 * @see ASTM C231, air content of the full mixture (from memory, proved by algebra).
 */
export function fullMixtureAir(sievedAir: number, passing: number, coarse: number): number | Issue {
  const wrong =
    wrongAir(sievedAir) ??
    notAboveZero(passing, "volume that passes the sieve") ??
    belowZero(coarse, "volume of coarse aggregate");
  if (wrong) return wrong;
  return (100 * sievedAir * passing) / (100 * (passing + coarse) - sievedAir * coarse);
}

/**
 * Air content of the mortar from a test on the part that passes the sieve.
 *
 * @param sievedAir Air found in the sieved sample, %.
 * @param passing Volume of the ingredients that pass the sieve, without air.
 * @param mortar Volume of cement, water and fine aggregate among them, without air.
 * @returns Air, % of the mortar. The issue `not-a-percentage`, `percent-as-share`, `not-above-zero` or
 *   `mortar-over-passing`.
 * @see ASTM C231, air content of the mortar fraction (from memory, proved by algebra).
 */
export function mortarAir(sievedAir: number, passing: number, mortar: number): number | Issue {
  const wrong =
    wrongAir(sievedAir) ??
    notAboveZero(passing, "volume that passes the sieve") ??
    notAboveZero(mortar, "volume of mortar");
  if (wrong) return wrong;
  if (mortar > passing) return issue("mortar-over-passing", { mortar, passing });
  return (100 * sievedAir * passing) / (100 * mortar + sievedAir * (passing - mortar));
}

function wrongAir(sievedAir: number): Issue | undefined {
  const place = "air of the sieved sample";
  return notAPercentage(sievedAir, place) ?? at(place, percentAsShare(sievedAir));
}
