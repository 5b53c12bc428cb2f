import { READING_FIELDS, type FieldId } from "./fields";
import type { SheetReading } from "./sheet-reading";
import { askedOfTests, type UnreadColumn } from "./unread-column";

/** What a sheet of volumetric tests has, and one of pressure meters has not. */
const OF_THE_VOLUMETRIC_TEST: readonly FieldId[] = [
  "method",
  "alcohol",
  "cups",
  "foam",
  "settle",
  "lateAlcohol",
  "inversion",
  "roll",
];

/**
 * Readings that may be of a pressure meter: beside them stands an aggregate correction factor, and nothing
 * that only the volumetric test has. Only the pressure method corrects for the aggregate (ASTM C231, common
 * practice). What is asked is whose they are.
 */
export function mayBeByPressure(
  columns: SheetReading["columns"],
  records: SheetReading["records"],
  unread: readonly UnreadColumn[],
): readonly UnreadColumn[] {
  const reading = READING_FIELDS.map((field) => columns[field]).find((place) => place);
  const mayHave = (field: FieldId) =>
    columns[field] !== undefined || unread.some(({ mayBe }) => mayBe.includes(field));
  const isOpen = columns.aggregateFactor && !OF_THE_VOLUMETRIC_TEST.some(mayHave);
  if (!reading || !isOpen) return [];
  const { index, header } = reading;
  const isTest = (record: number) => records[record]?.blank === false;
  return [askedOfTests("may-be-by-pressure", { index, header }, isTest)];
}
