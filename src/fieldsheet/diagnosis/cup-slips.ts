import { reportedFrom, type Slip, type SlipId } from "./slip";

/** A slip that counts the cups another number of times than once. */
function cupsTimes(id: SlipId, times: number): Slip {
  return {
    id,
    gives(row) {
      if (row.cups === 0) return [];
      const air = reportedFrom(row, { cups: times * row.cups });
      return [{ air, values: { cups: row.cups } }];
    },
  };
}

export const cupsForgotten = cupsTimes("cups-forgotten", 0);
export const cupsCountedTwice = cupsTimes("cups-counted-twice", 2);
export const cupsSubtracted = cupsTimes("cups-subtracted", -1);
