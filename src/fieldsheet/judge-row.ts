import { Problem } from "../measure/problem";
import { airMethodNamed, type AirMethod } from "../methods/air-method/named-method";
import { correctedAir, type CorrectedAir } from "../methods/volumetric-air/corrected-air";
import { judgeReadings, type ReadingVerdict } from "../methods/volumetric-air/final-reading";
import { meterReading } from "../methods/volumetric-air/meter-reading";
import type { FieldId } from "../reading/fields";
import type { JudgedRow, Limits } from "./judged-row";
import type { FieldRecord } from "./record";
import type { SheetContext } from "./sheet-context";

/** Cells that must be readable before a test can be called valid. */
export const DECIDING_FIELDS: readonly FieldId[] = [
  "first",
  "second",
  "third",
  "final",
  "cups",
  "alcohol",
  "foam",
  "settle",
  "packed",
  "leak",
  "lateAlcohol",
];

/**
 * Works out what the method makes of one row, as far as the row goes.
 *
 * @param record The row as read.
 * @param sheet Which columns there are: a sheet without an alcohol column is computed without a
 *   correction, a row without its alcohol is not.
 * @param limits Specification limits for the row.
 */
export function judgeRow(record: FieldRecord, sheet: SheetContext, limits: Limits): JudgedRow {
  const otherMethod = otherMethodOf(record);
  if (otherMethod) return { ...record, otherMethod, limits, state: "incomplete" };
  const readings = singleReadingField(sheet) ? undefined : verdictOn(record);
  const finalReading = finalReadingOf(record, sheet, readings);
  const result = finalReading === undefined ? undefined : resultOf(record, sheet, finalReading);
  return { ...record, readings, finalReading, result, limits, state: record.blank ? "" : "valid" };
}

/** The field that holds the only reading which the sheet records; `undefined` where there are more. */
export function singleReadingField(sheet: SheetContext): "first" | "final" | undefined {
  if (sheet.has("second")) return undefined;
  if (sheet.has("final")) return "final";
  return sheet.has("first") ? "first" : undefined;
}

function otherMethodOf({ values: { method } }: FieldRecord): AirMethod | undefined {
  const named = method === undefined ? undefined : airMethodNamed(method);
  return named === "volumetric" ? undefined : named;
}

function verdictOn({ values, unreadable }: FieldRecord): ReadingVerdict | undefined {
  const { first, second, third } = values;
  if (first === undefined || unreadable.second || unreadable.third) return undefined;
  const taken = [first, second, third].filter((reading) => reading !== undefined);
  return taken.every(isMeterReading) ? judgeReadings(first, second, third) : undefined;
}

function isMeterReading(reading: number): boolean {
  return attempt(() => meterReading(reading)) !== undefined;
}

function finalReadingOf(
  { values }: FieldRecord,
  sheet: SheetContext,
  verdict: ReadingVerdict | undefined,
): number | undefined {
  const single = singleReadingField(sheet);
  if (single) return values[single];
  return verdict?.next === "final" ? verdict.reading : undefined;
}

function resultOf(
  { values, unreadable }: FieldRecord,
  sheet: SheetContext,
  reading: number,
): CorrectedAir | undefined {
  const { cups, alcohol } = values;
  const alcoholUnknown = sheet.has("alcohol") && alcohol === undefined;
  if (alcoholUnknown || unreadable.cups) return undefined;
  // The rules say what is wrong with the value that stops the calculation.
  return attempt(() => correctedAir({ reading, cups, alcohol }));
}

function attempt<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (problem) {
    if (problem instanceof Problem) return undefined;
    throw problem;
  }
}
