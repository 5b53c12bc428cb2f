import type { Term } from "./terms";
import type { Dimension } from "./unit-spellings";

/** Terms that together mean a field. */
export interface Sense {
  /** One term of each group has to be there. */
  readonly needs: readonly (readonly Term[])[];
  /** Whether a yes says that all is in order. */
  readonly opposite: boolean;
  /** Whether the words are enough; else the cells have to hold what such a column holds. */
  readonly sure: boolean;
  /** Whether the words have to stand in this order: what was done after what. */
  readonly ordered: boolean;
  /** How surely the words say so, where it is not the number of needs that tells. */
  readonly weight: number | undefined;
}

/** What may be said of a field in a header. */
export interface FieldGrammar {
  readonly senses: readonly Sense[];
  /** Terms that may stand beside without meaning anything else. */
  readonly beside: ReadonlySet<Term>;
  /** What its unit may measure. */
  readonly units: readonly Dimension[];
  /** Whether it is measured again after something was done to the load: water added, the concrete pumped. */
  readonly again?: true;
}

/** What is said less plainly, in hundredths. */
const LESS_PLAIN = 63;
/** A yes that all is in order may be of what was done about it afterwards. */
const IN_ORDER = 66;
/** What is never read from these words alone. */
const TO_BE_ASKED = 50;

/**
 * What may be said of a field. "a b|c" needs a and one of b and c; "!" before a sense: a yes says that
 * all is in order; "?": only where the cells agree; "~" behind it: said less plainly than another column
 * may say it; "^": to be asked about; ">": in this order.
 *
 * @param senses Set off by commas.
 * @param beside Terms, set off by spaces.
 * @param units Dimensions, set off by spaces.
 */
export function field(senses: string, beside: string, units: string): FieldGrammar {
  return {
    senses: senses.split(",").map((sense) => senseOf(sense.trim())),
    beside: new Set(listed(beside) as Term[]),
    units: listed(units) as Dimension[],
  };
}

/** A field of the load itself, which is measured once more when something was done to it. */
export function measuredAgain(senses: string, beside: string, units: string): FieldGrammar {
  return { ...field(senses, beside, units), again: true };
}

/** A field that is known by its whole headings only. */
export function wholeHeadings(units: string): FieldGrammar {
  return { ...field("", "", units), senses: [] };
}

function senseOf(written: string): Sense {
  const opposite = written.startsWith("!");
  const bare = written.replace(/^[!?>]+|[~^]$/g, "");
  const needs = listed(bare).map((group) => group.split("|") as Term[]);
  return {
    needs,
    opposite,
    sure: !written.startsWith("?"),
    ordered: /^!?>/.test(written),
    weight: weightOf(written) ?? (opposite && needs.length === 1 ? IN_ORDER : undefined),
  };
}

function weightOf(written: string): number | undefined {
  return written.endsWith("~") ? LESS_PLAIN : written.endsWith("^") ? TO_BE_ASKED : undefined;
}

function listed(text: string): string[] {
  return text.split(/\s+/).filter((item) => item !== "");
}
