import { quoted } from "../../measure/cell-value";
import { testRule } from "../rule";
import { placeOfWord } from "../place-of-word";

/** A word beside the test that may say that it does not stand, or something else. */
export const mayBeCalledVoid = testRule({
  id: "may-be-called-void",
  weight: "error",
  needs: [],
  says: ["may-be-called-void"],
  basis:
    "A word that could decide a test and can be read in two ways is asked about, and the test is not called valid (our own rule).",
  look({ record, state, testersWord }, sheet) {
    if (state === "void" || testersWord?.says !== "may be void") return undefined;
    const { field = null, written, header } = testersWord;
    return {
      field,
      place: placeOfWord(record, testersWord, sheet),
      values: { written: quoted(written), header: quoted(header) },
    };
  },
});
