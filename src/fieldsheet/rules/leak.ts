import { voidRule } from "../rule";

/** Liquid was lost from the meter. */
export const leak = voidRule({
  id: "leak",
  needs: ["leak"],
  says: ["leak"],
  basis:
    "A meter that leaks lets the level fall without any air, so the test is void (from memory, ASTM C173 procedure).",
  look({ values }) {
    return values.leak ? { field: "leak" } : undefined;
  },
});
