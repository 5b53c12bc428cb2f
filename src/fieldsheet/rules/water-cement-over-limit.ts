import { compareWithLimits } from "../../acceptance/limits";
import { mostWaterCement } from "../../acceptance/water-cement/exposure-limit";
import { isIssue } from "../../measure/issue";
import { massOf } from "../../measure/water-amount";
import { waterCementRatio } from "../../methods/water-cement/water-cement";
import { testRule } from "../rule";

/** A w/cm, with what was added on site, over what its exposure allows. */
export const waterCementOverLimit = testRule({
  id: "water-cement-over-limit",
  weight: "doubt",
  needs: ["batchWater", "cementitious"],
  needsOneOf: ["waterCementLimit", "exposureClass"],
  anyMethod: true,
  says: ["water-cement-over-limit", "water-cement-over-limit-on-site", "water-cement-not-compared"],
  basis:
    "All water counts, with the free moisture of the aggregate and what was added on site, and the limit of w/cm still holds after it (ASTM C94). The limit is that of the sheet, else the least of its exposure classes (ACI 318-19 Table 19.3.2.1, from memory, to be verified). A US gallon of water is 8.33 lb (common practice). Free moisture that is not recorded counts as none, so that the ratio is the least that it can be.",
  look({ values }) {
    const { batchWater, freeMoisture, addedWater, cementitious } = values;
    const most = limitOf(values);
    if (!batchWater || !cementitious || most === undefined) return undefined;
    const given = [batchWater, cementitious, freeMoisture, addedWater];
    // A zero is nothing in any unit.
    const masses = given.map((one) => one && (one.value === 0 ? { mass: 0 } : massOf(one)));
    const units = new Set(masses.flatMap((one) => (one && "unit" in one ? one.unit : [])));
    const unknown = given.some((one, i) => one !== undefined && masses[i] === undefined);
    if (unknown || units.size !== 1)
      return { field: "batchWater", say: "water-cement-not-compared" };
    const [water, binder, moisture, added] = masses.map((one) => one?.mass);
    const ratio = waterCementRatio({
      batchWater: water!,
      cementitious: binder!,
      freeMoisture: moisture ?? 0,
      addedWater: added ?? 0,
    });
    if (isIssue(ratio) || compareWithLimits(ratio, undefined, most) === "within") return undefined;
    const shown = { ratio: Number(ratio.toFixed(3)), most };
    return added
      ? { field: "addedWater", say: "water-cement-over-limit-on-site", values: shown }
      : { field: "batchWater", values: shown };
  },
});

/** The limit of the sheet, else that of the exposure; of an unknown class there is none. */
function limitOf({
  waterCementLimit,
  exposureClass,
}: {
  readonly waterCementLimit?: number;
  readonly exposureClass?: string;
}): number | undefined {
  if (waterCementLimit !== undefined) return waterCementLimit;
  const most = exposureClass === undefined ? undefined : mostWaterCement(exposureClass);
  return isIssue(most) ? undefined : most;
}
