import { cylinderSizeNamed, LEAST_CYLINDERS } from "../../methods/specimens/cylinders";
import { testRule } from "../rule";

/** Fewer cylinders than one strength test is the mean of. */
export const tooFewCylinders = testRule({
  id: "too-few-cylinders",
  weight: "doubt",
  needs: ["cylinders"],
  anyMethod: true,
  says: ["too-few-cylinders", "too-few-cylinders-of-any-size"],
  basis:
    "A strength test is the mean of at least two 6 × 12 in (150 × 300 mm) or three 4 × 8 in (100 × 200 mm) cylinders (ACI 318-19 26.12.1, as articles on it and on 318-08 tell it). Where the size is not recorded, two are asked for; none made is no strength test.",
  look({ values: { cylinders, cylinderSize } }) {
    if (cylinders === undefined || cylinders <= 0) return undefined;
    const size = cylinderSize === undefined ? undefined : cylinderSizeNamed(cylinderSize);
    const least = size ? LEAST_CYLINDERS[size] : Math.min(...Object.values(LEAST_CYLINDERS));
    if (cylinders >= least) return undefined;
    return size
      ? { field: "cylinders", values: { cylinders, least, size } }
      : {
          field: "cylinders",
          say: "too-few-cylinders-of-any-size",
          values: { cylinders, ...leastOfEach() },
        };
  },
});

function leastOfEach() {
  return { large: LEAST_CYLINDERS["6 × 12 in"], small: LEAST_CYLINDERS["4 × 8 in"] };
}
