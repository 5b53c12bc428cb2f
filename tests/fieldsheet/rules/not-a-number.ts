import type { RuleCases } from "../rule-cases";

export const cases: RuleCases = {
  silent: [
    [
      { "First reading": "5 1/4", "Second reading": "5.25 %" },
      "a number as text is read where it can be read one way only",
    ],
    [{ Remarks: "about six" }, "a column that is not recognised"],
  ],
  speaks: [
    [
      { "First reading": "about 6" },
      [[1, "First reading", "“about 6” is not a number. Type a number, such as 5.25."]],
      "our own rule",
    ],
    [
      { Foam: "5,250" },
      [[1, "Foam", "“5,250” can be read in two ways. Type 5.250 if the comma is a decimal comma."]],
      "our own rule",
    ],
    [
      { Cups: { error: "#REF!" }, Tolerance: "±x" },
      [
        [1, "Cups", "The cell holds the error #REF!. Correct that cell first."],
        [1, "Tolerance", "“x” is not a number. Type a number, such as 5.25."],
      ],
      "each cell by itself",
    ],
  ],
};
