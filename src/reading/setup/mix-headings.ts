import { recogniseColumns } from "../columns";
import { nameInSetup, type FieldId } from "../fields";
import { GRAMMAR } from "../grammar";
import type { Term } from "../terms";
import type { Dimension } from "../unit-spellings";
import { languagesOf, understand, type UnderstoodHeader } from "../words-in-header";
import { ownHeading } from "./heading-words";

/** What is specified between limits. */
export const QUANTITIES = ["air", "density", "slump", "temperature"] as const;
export type SpecifiedQuantity = (typeof QUANTITIES)[number];

/** The ways to say between which limits: one in the middle and how far from it, or the limits. */
export const ROLES = ["target", "tolerance", "low", "high"] as const;
export type LimitRole = (typeof ROLES)[number];

/** Fields that a specification gives as one value. */
export const GIVEN_FIELDS = [
  "aggregate",
  "aggregateSize",
  "dischargeLimit",
  "revolutionLimit",
  "deliveryStandard",
] as const satisfies readonly FieldId[];
export type GivenField = (typeof GIVEN_FIELDS)[number];

/** What a column of the specifications by mix holds. */
export type MixHeading =
  "mix" | "exposure" | "source" | GivenField | `${SpecifiedQuantity} ${LimitRole}`;

/** A heading with the unit that is written in it. */
export interface HeadingMeant {
  readonly is: MixHeading;
  readonly unit?: string;
}

/** What the unit of a quantity measures. */
export const MEASURED_IN: Readonly<Record<SpecifiedQuantity, Dimension>> = {
  air: "percent",
  density: "density",
  slump: "length",
  temperature: "temperature",
};

/** Words that change nothing in a heading of specifications. */
const BESIDE: ReadonlySet<Term> = new Set<Term>(
  "air content concrete fresh limit specified nominal number class type volumetric of low high tolerance mix size largest share".split(
    " ",
  ) as Term[],
);

/** What the headings of specifications mean, by their words in the languages of the vocabulary. */
export function mixHeadings(texts: readonly string[]): readonly (HeadingMeant | undefined)[] {
  const languages = languagesOf(texts);
  return texts.map((text) => {
    if (text === "") return undefined;
    const own = ownHeading(text);
    if (own === "exposure" || own === "source") return { is: own };
    return own ? undefined : (meant(understand(text, languages)) ?? givenField(text));
  });
}

function meant({ words, unit }: UnderstoodHeader): HeadingMeant | undefined {
  const has = (term: Term) => words.some(({ terms }) => terms.includes(term));
  const of = (["slump", "density", "temperature", "aggregate"] as const).find(has);
  const known = words.every(({ terms }) => terms.some((term) => term === of || BESIDE.has(term)));
  if (!known || words.length === 0) return undefined;
  if (of === "aggregate" || (!of && has("largest"))) {
    const size = has("size") || has("largest") || has("nominal") || has("high");
    return size ? withUnit("aggregateSize", "length", unit) : { is: "aggregate" };
  }
  const role = (["tolerance", "low", "high"] as const).find(has);
  if (has("mix") && !of && !role) return { is: "mix" };
  if (!of && !role && !has("air") && !has("specified")) return undefined;
  const quantity = of ?? "air";
  return withUnit(`${quantity} ${role ?? "target"}`, MEASURED_IN[quantity], unit);
}

function withUnit(
  is: MixHeading,
  dimension: Dimension,
  unit: UnderstoodHeader["unit"],
): HeadingMeant | undefined {
  if (!unit?.dimension) return { is };
  return unit.dimension === dimension ? { is, unit: unit.unit } : undefined;
}

/** A field that is called so, where its value can be given for a mix. */
function givenField(text: string): HeadingMeant | undefined {
  const [found] = Object.entries(recogniseColumns([text]));
  const field = GIVEN_FIELDS.find(
    (each) => each === found?.[0] || nameInSetup(each) === text.trim().toLowerCase(),
  );
  const unit = found?.[1].unit;
  return field && { is: field, ...(unit && GRAMMAR[field].units.length > 0 && { unit }) };
}
