import type { Rule } from "../rule";

/** A result is reported from a test that does not stand. */
export const voidTestReported: Rule = {
  id: "void-test-reported",
  weight: "error",
  needs: ["air"],
  basis:
    "A void test gives no result; it is repeated (a meter maker's manual, 2019, describing ASTM C173).",
  look({ state, values: { air } }) {
    if (state !== "void" || air === undefined) return undefined;
    return { field: "air", values: { reported: air } };
  },
};
