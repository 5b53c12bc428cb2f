import type { FieldId } from "./fields";
import { AGGREGATE_GRAMMAR } from "./grammar/aggregate";
import { AIR_LIMIT_GRAMMAR } from "./grammar/air-limits";
import { AIR_TEST_GRAMMAR } from "./grammar/air-test";
import { DELIVERY_AND_SPECIMEN_GRAMMAR } from "./grammar/delivery-and-specimens";
import { DENSITY_GRAMMAR } from "./grammar/density";
import { IDENTITY_GRAMMAR } from "./grammar/identity";
import { PROCEDURE_GRAMMAR } from "./grammar/procedure";
import { SAMPLING_GRAMMAR } from "./grammar/sampling";
import { SLUMP_AND_WEATHER_GRAMMAR } from "./grammar/slump-and-weather";
import type { FieldGrammar } from "./sense";
import type { Term } from "./terms";
import type { Dimension } from "./unit-spellings";

/** What the terms of a header mean, the same in every language. */
export const GRAMMAR: Readonly<Record<FieldId, FieldGrammar>> = {
  ...IDENTITY_GRAMMAR,
  ...AIR_TEST_GRAMMAR,
  ...AIR_LIMIT_GRAMMAR,
  ...PROCEDURE_GRAMMAR,
  ...SAMPLING_GRAMMAR,
  ...DELIVERY_AND_SPECIMEN_GRAMMAR,
  ...AGGREGATE_GRAMMAR,
  ...DENSITY_GRAMMAR,
  ...SLUMP_AND_WEATHER_GRAMMAR,
};

/** Terms that change nothing wherever they stand. */
export const LOOSE: ReadonlySet<Term> = new Set<Term>([
  "concrete",
  "test",
  "measured",
  "volumetric",
  "fresh",
  "of",
  "share",
  "bulk",
  "by-pint",
  "by-gallon",
]);

/**
 * Where even a loose term means another thing: a test for leaks that was made found none by that,
 * and the time that something was added is not that of the test.
 */
export const NOT_LOOSE: Readonly<Partial<Record<FieldId, ReadonlySet<Term>>>> = {
  leak: new Set<Term>(["test"]),
  time: new Set<Term>(["added", "left", "neck", "bowl"]),
};

/** Whether the unit of a column can be that of a field; a question can be asked of each. */
export function mayHaveUnit(field: FieldId, unit: Dimension | undefined): boolean {
  return unit === undefined || unit === "yes-no" || GRAMMAR[field].units.includes(unit);
}
