import { isOver } from "../../measure/bounded";
import { FOAM_LIMIT } from "../../methods/volumetric-air/validity";
import { SETTLE_WITHIN_MINUTES } from "../../methods/volumetric-air/settled-level";
import type { DecidedTest } from "../judged-test";
import { sheetRule, type RemarkAtIn } from "../rule";

/** The repeat of a void test used no more alcohol than the test itself. */
export const repeatWithoutMoreAlcohol = sheetRule({
  id: "repeat-without-more-alcohol",
  weight: "doubt",
  needs: ["alcohol"],
  needsOneOf: ["sample", "load"],
  says: ["repeat-without-more-alcohol"],
  basis:
    "A test that was void for its foam, its unsteady level or its readings is repeated with more alcohol (a meter maker's manual, 2019, describing ASTM C173).",
  *look(tests) {
    const lacked = tests.all.filter(lackedAlcohol);
    if (lacked.length === 0) return;
    const next = yield* tests.nextOfSample();
    for (const test of lacked) yield remarkOn(test, next.get(test));
  },
});

function lackedAlcohol(test: DecidedTest): boolean {
  if (test.state !== "void") return false;
  const { foam, settle } = test.values;
  const foamed = foam && isOver(foam, FOAM_LIMIT);
  const unsteady = settle && isOver(settle, SETTLE_WITHIN_MINUTES);
  return Boolean(foamed || unsteady) || test.readings?.next === "void";
}

type Said = RemarkAtIn<["repeat-without-more-alcohol"]>;

function remarkOn(
  { values: { alcohol: before } }: DecidedTest,
  repeat?: DecidedTest,
): Said | undefined {
  const after = repeat?.values.alcohol;
  // Amounts in two units are not compared: the method's units are rounded pairs.
  if (!repeat || !before || !after || before.unit !== after.unit) return undefined;
  if (after.amount > before.amount) return undefined;
  const values = { before: before.amount, after: after.amount, unit: after.unit };
  return { record: repeat.record, field: "alcohol", values };
}
