import { phrase } from "../messages/catalogue";
import { fieldNames } from "../messages/english/field-names";
import type { Phrase } from "../messages/sentence";
import { AGGREGATE_FIELDS } from "./fields/aggregate";
import { AIR_LIMIT_FIELDS } from "./fields/air-limits";
import { AIR_TEST_FIELDS } from "./fields/air-test";
import { DELIVERY_AND_SPECIMEN_FIELDS } from "./fields/delivery-and-specimens";
import { DENSITY_FIELDS } from "./fields/density";
import { IDENTITY_FIELDS } from "./fields/identity";
import { PROCEDURE_FIELDS } from "./fields/procedure";
import { SAMPLING_FIELDS } from "./fields/sampling";
import { SLUMP_AND_WEATHER_FIELDS } from "./fields/slump-and-weather";

export type { FieldKind } from "./fields/field";

/** What a field sheet may hold. */
export const FIELDS = {
  ...IDENTITY_FIELDS,
  ...AIR_TEST_FIELDS,
  ...AIR_LIMIT_FIELDS,
  ...PROCEDURE_FIELDS,
  ...SAMPLING_FIELDS,
  ...DELIVERY_AND_SPECIMEN_FIELDS,
  ...AGGREGATE_FIELDS,
  ...DENSITY_FIELDS,
  ...SLUMP_AND_WEATHER_FIELDS,
} as const;

/** The id of a field. */
export type FieldId = keyof typeof FIELDS;

/** What a field is called in a sentence. */
export function fieldName(field: FieldId): Phrase {
  return phrase(`field-${field}`);
}

/** What a field is called in a setup, whatever language is spoken; its other names are read as headers are. */
export function nameInSetup(field: FieldId): string {
  return fieldNames[`field-${field}`];
}

/** The fields that hold a meter reading, in the order in which they are taken. */
export const READING_FIELDS = ["first", "second", "third", "final"] as const;
