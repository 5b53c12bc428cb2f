import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      [
        { Sample: "S-1", "First reading": null, "Second reading": null },
        { Sample: "S-1", "First reading": null, "Second reading": null },
      ],
      "no test was made",
    ],
    [[{ Sample: "S-1" }, { Sample: "S-2" }], "two samples may give one result"],
    [[{ Sample: "S-1" }, { Sample: "S-1", "Alcohol (oz)": 24 }], "a repeat"],
    [[{ Sample: undefined }, {}], "samples cannot be told apart"],
    [[{ Sample: null }, { Sample: null }], "no names to compare"],
  ],
  speaks: [
    [
      [{ Sample: "S-1" }, { Sample: "S-2" }, { Sample: " S-1 " }],
      [
        [
          3,
          "Sample",
          "This row says the same as row 1 in every column that was recognised. Take one of them out if the test was made once.",
        ],
      ],
      "our own rule",
    ],
  ],
};
