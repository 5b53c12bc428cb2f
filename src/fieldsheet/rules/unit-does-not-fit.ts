import { canBe, QUANTITIES, type Quantity } from "../../measure/plausible";
import { systemNamed } from "../../measure/system-of-value";
import { otherSystem } from "../../measure/unit-system";
import type { FieldId } from "../../reading/fields";
import { testRule, type RemarkIn } from "../rule";

/** What is measured beside the air, and between which values it can lie. */
const MEASURED = {
  slump: QUANTITIES.slump,
  concreteTemperature: QUANTITIES.concreteTemperature,
  airTemperature: QUANTITIES.airTemperature,
  density: QUANTITIES.density,
  densityTarget: QUANTITIES.density,
} as const satisfies Partial<Record<FieldId, Quantity>>;
const FIELDS = Object.keys(MEASURED) as (keyof typeof MEASURED)[];

const SAYS = ["unit-does-not-fit", "value-in-no-unit"] as const;

/** A slump, a temperature or a density that cannot be in the unit that is written with it or above it. */
export const unitDoesNotFit = testRule({
  id: "unit-does-not-fit",
  weight: "doubt",
  needs: [],
  needsOneOf: FIELDS,
  anyMethod: true,
  says: SAYS,
  basis:
    "No fresh concrete passes these limits (our own choice); they are wide enough that a number beyond them was measured in another unit or mistyped.",
  look({ values }, { columns }) {
    const remarks: RemarkIn<typeof SAYS>[] = [];
    for (const field of FIELDS) {
      const found = values[field];
      if (found === undefined) continue;
      const { value, unit = columns[field]?.unit } =
        typeof found === "number" ? { value: found } : found;
      const quantity: Quantity = MEASURED[field];
      const system = unit === undefined ? undefined : systemNamed(unit, quantity);
      if (!system || canBe(value, quantity, system)) continue;
      const [low, high] = quantity.limits[system];
      const other = otherSystem(system);
      const said = { value, unit: quantity.units[system], low, high };
      const otherUnit = quantity.units[other];
      remarks.push(
        canBe(value, quantity, other)
          ? { field, values: { ...said, otherUnit } }
          : { field, say: "value-in-no-unit", values: said },
      );
    }
    return remarks;
  },
});
