import type { RuleCases } from "../rule-cases";

const said = (written: string, header: string) =>
  `“${written}” in the column “${header}” can be read in two ways: that the test is void, or something else. Write “test void” if it is, or say what it is about.`;

export const cases: RuleCases = {
  silent: [
    [{ Remarks: "void" }, "called-void says it"],
    [{ Remarks: "light rain" }, "what the words say"],
    [{ Remarks: "no leak, little foam" }, "what the words say"],
    [{ Remarks: "leaked while rolling", Leak: "yes" }, "the test is void already"],
    [{ Remarks: "rejected", Leak: "yes" }, "the test is void already"],
  ],
  speaks: [
    [{ Remarks: "rejected" }, [[1, "", said("rejected", "Remarks")]], "the load may be rejected"],
    [
      { Remarks: "repeat of S-3 (void)" },
      [[1, "", said("repeat of S-3 (void)", "Remarks")]],
      "the test before was void",
    ],
    [
      { Remarks: "leaked while rolling" },
      [
        [
          1,
          "",
          "“leaked while rolling” in the column “Remarks” tells of something that may void the test. Write “test void” if it does; if there was nothing, say “no …” there, such as “no leak”.",
        ],
      ],
      "a leak voids a test (ASTM C173)",
    ],
    [{ Status: "V" }, [[1, "", said("V", "Status")]], "valid or void"],
  ],
};
