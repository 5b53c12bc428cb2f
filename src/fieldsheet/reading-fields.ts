import { READING_FIELDS } from "../reading/fields";
import type { JudgedRow } from "./judged-row";

/** A meter reading and the field that holds it. */
interface PlacedReading {
  readonly field: (typeof READING_FIELDS)[number];
  readonly value: number;
}

/**
 * The readings of a row that can be judged each by itself. A recorded final reading is one only as
 * long as the readings before it do not decide what it has to be.
 */
export function readingsByThemselves({ values, finalReading }: JudgedRow): PlacedReading[] {
  return READING_FIELDS.flatMap((field) => {
    const value = values[field];
    const decided = field === "final" && finalReading !== undefined && value !== finalReading;
    return value === undefined || decided ? [] : [{ field, value }];
  });
}

/** The readings that were taken after rolling, in order; a final one that is only written down again is left out. */
export function readingsTaken({ values: { first, second, third, final } }: JudgedRow): number[] {
  const taken = [first, second, third].filter((reading) => reading !== undefined);
  return taken.length > 0 || final === undefined ? taken : [final];
}
