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
  *look(tests, sheet) {
    const voided = tests.all.filter(({ state }) => state === "void");
    if (voided.length === 0) return;
    const next = yield* tests.nextOfSample();
    const field = sheet.has("sample") ? ("sample" as const) : ("load" as const);
    for (const test of voided) if (!next.has(test)) yield { record: test.record, field };
  },
});
