import { quoted } from "../../measure/cell-value";
import { testRule } from "../rule";
import { placeOfWord } from "../place-of-word";

/** A word beside the test that may say that it does not stand, or tells of what would void it. */
export const mayBeCalledVoid = testRule({
  id: "may-be-called-void",
  weight: "error",
  needs: [],
  says: ["may-be-called-void", "may-tell-of-fault"],
  basis:
    "A word that could decide a test and can be read in two ways is asked about, and the test is not called valid (our own rule).",
  look({ record, state, testersWord }, sheet) {
    if (state === "void" || !testersWord || testersWord.says === "void") return undefined;
    const { field = null, says, written, header } = testersWord;
    return {
      field,
      say: says === "a fault" ? "may-tell-of-fault" : "may-be-called-void",
      place: placeOfWord(record, testersWord, sheet),
      values: { written: quoted(written), header: quoted(header) },
    };
  },
});
