import { quoted } from "../../measure/cell-value";
import { isPorousAggregate } from "../../methods/air-method/porous-aggregate";
import { testRule } from "../rule";

/** A test that was not made by the volumetric method. */
export const otherMethod = testRule({
  id: "other-method",
  weight: "note",
  needs: ["method"],
  anyMethod: true,
  says: ["other-method"],
  basis:
    "Readings of another method mean something else, so they are not judged as a volumetric test (our own rule).",
  look({ otherMethod, values: { method, aggregate = "" } }) {
    // The void test of such an aggregate is told by its own rule.
    if (!otherMethod || (otherMethod === "pressure" && isPorousAggregate(aggregate))) {
      return undefined;
    }
    return { field: "method", values: { method: quoted(method) } };
  },
});
