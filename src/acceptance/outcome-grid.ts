import { isIssue, type Issue } from "../measure/issue";
import { exact } from "../measure/rounding";
import { alcoholStepsAway } from "./alcohol-steps";
import { outcomeOf, type BorderlineTest, type Outcome } from "./borderline-test";

/** By how much the final meter reading differs in each column of the grid, %. */
export const READING_CHANGES: readonly number[] = [-0.5, -0.25, 0, 0.25, 0.5];

/** One cell of the grid. */
export interface GridCell {
  /** Final meter reading in this column, %. */
  readonly reading: number;
  readonly outcome: Outcome | Issue;
  /** Whether the verdict differs from that of the test as recorded. */
  readonly turned: boolean;
  /** The test as recorded. */
  readonly recorded: boolean;
}

/** One row of the grid: what differs from the record besides the reading. */
export interface GridRow {
  readonly differs: "nothing" | "cups" | "alcohol";
  /** −1 for one step less, 1 for one step more, 0 for as recorded. */
  readonly steps: number;
  /** The test of this row, with the reading as recorded. */
  readonly test: BorderlineTest;
  /** One cell for each of `READING_CHANGES`. */
  readonly cells: readonly GridCell[];
}

/**
 * What the test would have given with a reading up to two graduations off, alone or together with
 * one cup or one step of alcohol less or more. A row that cannot be, such as −1 cup, is left out; a
 * cell that cannot be, such as a reading off the scale, says why.
 *
 * @param test Test as recorded. Without alcohol there are no rows of other alcohol.
 */
export function outcomeGrid(test: BorderlineTest): readonly GridRow[] {
  const recorded = outcomeOf(test);
  const cells = (row: BorderlineTest, isRecorded: boolean): readonly GridCell[] =>
    READING_CHANGES.map((change) => {
      const reading = exact(test.reading + change);
      const outcome = outcomeOf({ ...row, reading });
      return {
        reading,
        outcome,
        turned: !isIssue(outcome) && !isIssue(recorded) && outcome.verdict !== recorded.verdict,
        recorded: isRecorded && change === 0,
      };
    });
  const rows: Omit<GridRow, "cells">[] = [
    { differs: "nothing", steps: 0, test },
    ...otherCups(test),
    ...otherAlcohol(test),
  ];
  return rows.map((row) => ({ ...row, cells: cells(row.test, row.differs === "nothing") }));
}

function otherCups(test: BorderlineTest): Omit<GridRow, "cells">[] {
  const cups = test.cups ?? 0;
  return [-1, 1]
    .filter((steps) => cups + steps >= 0)
    .map((steps) => ({ differs: "cups", steps, test: { ...test, cups: cups + steps } }));
}

function otherAlcohol(test: BorderlineTest): Omit<GridRow, "cells">[] {
  return [-1, 1].flatMap((steps) => {
    const alcohol = test.alcohol && alcoholStepsAway(test.alcohol, steps);
    return alcohol ? [{ differs: "alcohol" as const, steps, test: { ...test, alcohol } }] : [];
  });
}
