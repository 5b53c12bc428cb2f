import {
  ACCEPTABLE_RANGE,
  cylinderSizeNamed,
  rangeOfCylinders,
} from "../../methods/specimens/cylinders";
import { testRule } from "../rule";
import { strengthsOfCylinders } from "../strengths-of-cylinders";

/** Companion cylinders of one sample whose strengths lie further apart than the test allows. */
export const cylindersApart = testRule({
  id: "cylinders-apart",
  weight: "doubt",
  needs: ["firstCylinder", "secondCylinder"],
  anyMethod: true,
  says: ["cylinders-apart"],
  basis:
    "Two companion cylinders of 6 × 12 in made in the field should differ by no more than 8.0 % of their mean, three by 9.5 %; of 4 × 8 in 9.0 % and 10.6 % (ASTM C39, from memory, to be verified). Where the size is not recorded, the wider pair is held.",
  look({ values }) {
    const found = strengthsOfCylinders(values);
    if (!found || found.strengths.some((strength) => strength <= 0)) return undefined;
    const { cylinderSize } = values;
    const named = cylinderSize === undefined ? undefined : cylinderSizeNamed(cylinderSize);
    const count = found.strengths.length as 2 | 3;
    const most = ACCEPTABLE_RANGE[named ?? "4 × 8 in"][count];
    const range = rangeOfCylinders(found.strengths);
    if (range <= most) return undefined;
    return { field: "firstCylinder", values: { count, range: Number(range.toFixed(1)), most } };
  },
});
