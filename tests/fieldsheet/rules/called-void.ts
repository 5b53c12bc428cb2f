import type { RuleCases } from "../rule-cases";

const WORDS = "what the words say";
const said = (written: string, header: string) =>
  `The tester calls the test void: “${written}” in the column “${header}”. It gives no air content; repeat it.`;

export const cases: RuleCases = {
  silent: [
    [{ Remarks: "not void" }, WORDS],
    [{ Remarks: "surface voids patched" }, "voids of a surface"],
    [{ Remarks: "rejected" }, "may-be-called-void asks"],
    [{ "Void?": "no" }, WORDS],
    [{ "Reported air": "ok" }, WORDS],
    [{ "Slump remark": 4 }, WORDS],
  ],
  speaks: [
    [{ Remarks: "void - leak" }, [[1, "", said("void - leak", "Remarks")]], WORDS],
    [{ "Reported air": "VOID" }, [[1, "Reported air", said("VOID", "Reported air")]], WORDS],
    [
      { "Second reading": "discarded, foam" },
      [[1, "Second reading", said("discarded, foam", "Second reading")]],
      WORDS,
    ],
    [{ "Void?": "x" }, [[1, "", said("x", "Void?")]], "a tick below the word itself"],
    [{ "Valid (Y/N)": "N" }, [[1, "", said("N", "Valid (Y/N)")]], WORDS],
  ],
};
