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
  look(tests, sheet) {
    return tests.all
      .filter((test) => test.state === "void" && !tests.nextOfSample.has(test))
      .map(({ record }) => ({ record, field: sheet.has("sample") ? "sample" : "load" }));
  },
});
