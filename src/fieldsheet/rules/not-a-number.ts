import { FIELDS, type FieldKind } from "../../reading/fields";
import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

const NUMBER_KINDS: readonly FieldKind[] = [
  "number",
  "measured",
  "density",
  "cups",
  "foam",
  "settling",
  "specification",
  "tolerance",
  "minutes",
  "seconds",
  "alcohol",
  "water",
  "aggregate-size",
];
const SAYS = [
  "not-a-number",
  "alcohol-not-an-amount",
  "comma-is-unclear",
  "point-is-unclear",
  "two-ways",
  "bound-leaves-open",
  "not-a-specification",
  "specification-looks-like-date",
  "nothing-above",
  "cell-error",
  "zero-or-blank",
] as const;

/** Something other than a number where a number belongs. */
export const notANumber = testRule({
  id: "not-a-number",
  weight: "error",
  needs: [],
  anyMethod: true,
  says: SAYS,
  basis: "A result is worked out from numbers only; nothing is guessed from text (our own rule).",
  look: ({ unreadable }) =>
    unreadableAs(unreadable, SAYS).filter(({ field }) => NUMBER_KINDS.includes(FIELDS[field].kind)),
});
