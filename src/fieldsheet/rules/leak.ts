import type { Rule } from "../rule";

/** Liquid was lost from the meter. */
export const leak: Rule = {
  id: "leak",
  weight: "void",
  needs: ["leak"],
  basis:
    "A meter that leaks lets the level fall without any air, so the test is void (from memory, ASTM C173 procedure).",
  look({ values }) {
    return values.leak ? { field: "leak" } : undefined;
  },
};
