import { isIssue } from "../../measure/issue";
import { canBe, QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import { isPorousAggregate } from "../../methods/air-method/porous-aggregate";
import { gravimetricAir } from "../../methods/density-and-yield/gravimetric-air";
import type { FieldValues } from "../../reading/record";
import { testRule } from "../rule";

/**
 * Two sound results may differ by about this much, % air: two densities by one operator may differ by
 * 1.85 lb/ft³, 1.3 % of 145 lb/ft³ (from memory, ASTM C138 precision), and a reading by a graduation.
 */
export const METHODS_AGREE_WITHIN = 1.5;

/** A yield so near to the design is right (our own limit). */
const YIELD_RIGHT_WITHIN = 0.02;

/** Air by the volume and air by the density are far apart. */
export const methodsDisagree = testRule({
  id: "methods-disagree",
  weight: "doubt",
  needs: [],
  needsOneOf: ["gravimetricAir", "density"],
  says: [
    "methods-disagree",
    "methods-disagree-meter",
    "methods-disagree-weighing",
    "methods-disagree-batch",
  ],
  basis:
    "Air from the density and from the meter lie within about 1.5 % of each other (our own limit, derived from the precision of ASTM C138, from memory); further apart, a batch mass, a tare, a moisture or a reading is wrong (common practice). A yield that is off to the same side rests on the same density, one that is off to the other side on the same batch masses, and one near 1 speaks for both (our own reading). Not said of very porous aggregate, for which the density is no guide (Kansas DOT KT-20).",
  look({ state, result, values }, sheet) {
    if (state !== "valid" || !result || isPorousAggregate(values.aggregate ?? "")) return undefined;
    const gravimetric = airFromDensity(values);
    if (gravimetric === undefined) return undefined;
    const apart = exact(gravimetric - result.air);
    if (Math.abs(apart) <= METHODS_AGREE_WITHIN) return undefined;
    const yielded = values.relativeYield;
    const field = sheet.has("gravimetricAir") ? "gravimetricAir" : "density";
    return {
      field,
      say: yielded === undefined ? "methods-disagree" : likelyWrong(apart, yielded),
      values: {
        volumetric: result.air,
        gravimetric: Number(gravimetric.toFixed(1)),
        yielded: yielded ?? "",
      },
    };
  },
});

/** Which side is likelier wrong, by the yield: light concrete shows as air and as over-yield alike. */
function likelyWrong(apart: number, relativeYield: number) {
  const off = exact(relativeYield - 1);
  if (Math.abs(off) <= YIELD_RIGHT_WITHIN) return "methods-disagree-meter";
  return off > 0 === apart > 0 ? "methods-disagree-weighing" : "methods-disagree-batch";
}

function airFromDensity(values: FieldValues): number | undefined {
  const { gravimetricAir: given, density, theoreticalDensity: theoretical } = values;
  if (given !== undefined) return given;
  if (density === undefined || theoretical === undefined) return undefined;
  const system = (["us", "si"] as const).find((system) =>
    [density, theoretical].every((value) => canBe(value, QUANTITIES.density, system)),
  );
  const air = system && gravimetricAir(theoretical, density, system);
  return isIssue(air) ? undefined : air;
}
