import { testRule } from "../rule";

/** A result is reported from a test that does not stand. */
export const voidTestReported = testRule({
  id: "void-test-reported",
  weight: "error",
  needs: ["air"],
  says: ["void-test-reported"],
  basis:
    "A void test gives no result; it is repeated (a meter maker's manual, 2019, describing ASTM C173).",
  look({ state, values: { air } }) {
    if (state !== "void" || air === undefined) return undefined;
    return { field: "air", values: { reported: air } };
  },
});
