import { voidRule } from "../rule";

/** Concrete was still packed in the bowl when it was emptied. */
export const packedConcreteLeft = voidRule({
  id: "packed-concrete-left",
  needs: ["packed"],
  says: ["packed-concrete-left"],
  basis:
    "Concrete that stayed packed in the bowl gave up no air to the reading, so the test is void (common practice).",
  look({ values: { packed } }) {
    return packed ? { field: "packed" } : undefined;
  },
});
