/** Foam over this many full percent divisions of the neck makes the test void. */
export const FOAM_LIMIT = 2;

/** Whether there is too much foam to read the level (meter maker's manual, 2019, describing C173). */
export function foamOverLimit(divisions: number): boolean {
  return divisions > FOAM_LIMIT;
}
