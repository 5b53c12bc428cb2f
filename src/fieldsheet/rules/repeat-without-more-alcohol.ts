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
  look(tests) {
    const lacked = tests.all.filter(lackedAlcohol);
    return lacked.flatMap((test) => remarkOn(test, tests.nextOfSample.get(test)));
  },
});

function lackedAlcohol({ state, readings, values: { foam, settle } }: DecidedTest): boolean {
  if (state !== "void") return false;
  const foamed = foam && isOver(foam, FOAM_LIMIT);
  const unsteady = settle && isOver(settle, SETTLE_WITHIN_MINUTES);
  return Boolean(foamed || unsteady) || readings?.next === "void";
}

type Said = RemarkAtIn<["repeat-without-more-alcohol"]>;

function remarkOn({ values: { alcohol: before } }: DecidedTest, repeat?: DecidedTest): Said[] {
  const after = repeat?.values.alcohol;
  // Amounts in two units are not compared: the method's units are rounded pairs.
  if (!repeat || !before || !after || before.unit !== after.unit) return [];
  if (after.amount > before.amount) return [];
  const values = { before: before.amount, after: after.amount, unit: after.unit };
  return [{ record: repeat.record, field: "alcohol", values }];
}
