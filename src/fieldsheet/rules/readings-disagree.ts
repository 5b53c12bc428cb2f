import { voidRule } from "../rule";

/** The third reading still differs from the second. */
export const readingsDisagree = voidRule({
  id: "readings-disagree",
  needs: ["first", "second", "third"],
  says: ["readings-disagree"],
  basis:
    "When the second reading differs from the first by more than 0.25 %, a third must lie within 0.25 % of the second; otherwise the test is void and repeated with more alcohol (common practice).",
  look({ readings, values: { second, third } }) {
    if (readings?.next !== "void") return undefined;
    return { field: "third", values: { second: second!, third: third! } };
  },
});
