import { quoted } from "../../measure/cell-value";
import { voidRule } from "../rule";
import { placeOfWord } from "../place-of-word";

/** The tester himself says that the test does not stand. */
export const calledVoid = voidRule({
  id: "called-void",
  needs: [],
  says: ["called-void"],
  basis:
    "Whoever made the test has seen what no number shows; his word that it does not stand counts (common practice).",
  look({ record, testersWord }, sheet) {
    if (testersWord?.says !== "void") return undefined;
    const { field = null, written, header } = testersWord;
    return {
      field,
      place: placeOfWord(record, testersWord, sheet),
      values: { written: quoted(written), header: quoted(header) },
    };
  },
});
