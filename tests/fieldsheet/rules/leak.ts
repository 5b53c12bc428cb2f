import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Leak: "none" }, "from memory, ASTM C173 procedure"],
    [{ Leak: null }, "a blank says nothing"],
  ],
  speaks: [
    [
      { Leak: "yes" },
      [[1, "Leak", "The meter leaked. The test is void: stop the leak and repeat it."]],
      "from memory, ASTM C173 procedure",
    ],
  ],
};
