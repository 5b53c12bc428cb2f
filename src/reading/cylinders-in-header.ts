import type { FieldId } from "./fields";
import type { Token } from "./units-in-header";

const listed = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** What a cylinder of concrete is called, in any of our languages. */
const CYLINDER = listed(
  "cyl cyls cylinder cylinders cil cilindro cilindros probeta probetas cylindre cylindres " +
    "eprouvette eprouvettes eprouv zyl zylinder probekorper specimen specimens",
);
const STRENGTH = listed(
  "fc rc mpa psi strength resistencia resist resistance festigkeit druckfestigkeit compresion compression",
);
const AGE = "28";
const DAY = listed("d day days dia dias j jour jours t tag tage");
const ORDINALS = [listed("1 a i"), listed("2 b ii"), listed("3 c iii")];
const FIELDS = ["firstCylinder", "secondCylinder", "thirdCylinder"] as const;
const MADE = listed(
  "made cast moulded molded taken count qty quantity num nb nbre hechos hechas elaborados moldeados " +
    "tomados cant cantidad pris prises moules faits stk stuck anz anzahl hergestellt",
);

/**
 * The strength of one cylinder at 28 days, or how many were made, where a header says nothing else: "Cyl. A 28 d",
 * "28 d #2", "C1 28d", "Cyl. made". They are worded in any order, so that no list of headings holds them all.
 */
export function cylindersInHeader(tokens: readonly Token[]): FieldId[] {
  const texts = tokens.map(({ text }) => text);
  const isCylinder = (text: string, at: number) =>
    CYLINDER.has(text) || (text === "c" && at === 0 && ordinalOf(texts[1]) >= 0);
  const others = texts.filter((text, at) => !isCylinder(text, at));
  const hasAge = texts.includes(AGE) && texts.some((text) => DAY.has(text));
  if (hasAge) {
    const left = others.filter(
      (text) => text !== AGE && text !== "number" && !DAY.has(text) && !STRENGTH.has(text),
    );
    const which = left.length === 1 ? FIELDS[ordinalOf(left[0])] : undefined;
    return which ? [which] : [];
  }
  // "# cylinders" counts them, "Cylinder #" names one.
  const counts = (text: string) => MADE.has(text) || (text === "number" && texts[0] === "number");
  const isCount = others.length > 0 && others.length < texts.length && others.every(counts);
  return isCount ? ["cylinders"] : [];
}

function ordinalOf(text: string | undefined): number {
  return ORDINALS.findIndex((each) => text !== undefined && each.has(text));
}
