import { exact, roundToStep } from "../../measure/rounding";
import { reportedFrom, unrounded, type Slip } from "./slip";
import type { WrongResult } from "./wrong-result";

/** Averages are written to these steps by people who do not round to the quarter. */
const AVERAGES_WRITTEN_TO = [0.1, 0.01, 0.001];

/** A reading from before the final one: the first, or a second that a third replaced. */
export const firstReadingUsed: Slip = {
  id: "first-reading-used",
  gives(row) {
    return earlierReadings(row).map((reading) => ({
      air: reportedFrom(row, { reading }),
      values: { used: reading, reading: row.reading },
    }));
  },
};

export const readingsAveraged: Slip = {
  id: "readings-averaged",
  gives(row) {
    return averages(row).flatMap((average) => {
      const result = unrounded(row, { reading: average });
      const written = AVERAGES_WRITTEN_TO.map((step) => roundToStep(result, step));
      const values = { average: Number(average.toFixed(3)), reading: row.reading };
      return [reportedFrom(row, { reading: average }), ...written].map((air) => ({ air, values }));
    });
  },
};

/** The sheet's own final reading, where it is none of the readings that were taken. */
export const recordedFinalUsed: Slip = {
  id: "recorded-final-used",
  gives(row) {
    const { recordedFinal: final } = row;
    if (final === undefined || finalIsRight(row) || finalIsEarlierReading(row)) return [];
    const air = reportedFrom(row, { reading: final });
    return [{ air, values: { used: final, reading: row.reading } }];
  },
};

/** Whether the sheet's final reading is an earlier one that the readings do not make final. */
export function finalIsEarlierReading(row: WrongResult): boolean {
  return row.recordedFinal !== undefined && earlierReadings(row).includes(row.recordedFinal);
}

/** Whether the sheet's final reading is an average of the readings, as people write it. */
export function finalIsAverage(row: WrongResult): boolean {
  const { recordedFinal: final, reading } = row;
  if (final === undefined || final === reading) return false;
  return averages(row).some((average) => Math.abs(exact(final - average)) <= 0.05);
}

/** Whether the sheet's final reading is the right one, so that whoever wrote it knew it. */
export function finalIsRight({ recordedFinal, reading }: WrongResult): boolean {
  return recordedFinal !== undefined && exact(recordedFinal - reading) === 0;
}

function earlierReadings({ taken, reading }: WrongResult): number[] {
  const before = taken.slice(0, taken.indexOf(reading, 1));
  return before.filter((earlier) => earlier !== reading);
}

/** Means of the first two, the last two and all readings that were taken, other than the final one. */
function averages({ taken, reading }: WrongResult): number[] {
  const means = [taken.slice(0, 2), taken.slice(-2), taken].map(
    (readings) => readings.reduce((sum, one) => sum + one, 0) / readings.length,
  );
  return means.filter((mean) => exact(mean - reading) !== 0);
}
