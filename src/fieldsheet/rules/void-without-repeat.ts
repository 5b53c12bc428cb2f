import { nextTestOfSample } from "../same-sample";
import { sheetRule } from "../rule";

/** A void test that nobody repeated. */
export const voidWithoutRepeat = sheetRule({
  id: "void-without-repeat",
  weight: "doubt",
  needs: [],
  needsOneOf: ["sample", "load"],
  says: ["void-without-repeat"],
  basis:
    "A void test is repeated on the same sample (a meter maker's manual, 2019, describing ASTM C173).",
  look({ all: rows }, sheet) {
    const next = nextTestOfSample(rows);
    return rows
      .filter((row) => row.state === "void" && !next.has(row))
      .map(({ row }) => ({ row, field: sheet.has("sample") ? "sample" : "load" }));
  },
});
