import { quoted } from "../../measure/cell-value";
import { isPorousAggregate } from "../../methods/air-method/porous-aggregate";
import { voidRule } from "../rule";

/** A pressure meter on aggregate that holds air of its own. */
export const wrongMethodForAggregate = voidRule({
  id: "wrong-method-for-aggregate",
  needs: ["method", "aggregate"],
  anyMethod: true,
  says: ["wrong-method-for-aggregate"],
  basis:
    "The pressure method does not apply to lightweight, slag or very porous aggregate, where it counts in the air of the pores; the volumetric method does (ASTM C231-03 scope; Kansas DOT KT-18; Montana DOT MT 102).",
  look({ otherMethod, values: { method, aggregate } }) {
    if (otherMethod !== "pressure" || !isPorousAggregate(aggregate ?? "")) return undefined;
    return { field: "method", values: { method: quoted(method), aggregate: quoted(aggregate) } };
  },
});
