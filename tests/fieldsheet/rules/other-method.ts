import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [{ Method: "ASTM C173/C173M" }, "our own rule"],
    [{ Method: "as usual" }, "names no method"],
    [{ Method: "pressure", Aggregate: "lightweight" }, "wrong-method-for-aggregate says it"],
  ],
  speaks: [
    [
      { Method: "Pressure", "Second reading": null },
      [
        [
          1,
          "Method",
          "“Pressure” is not the volumetric method, so the air of this test is not judged here.",
        ],
      ],
      "our own rule",
    ],
  ],
};
