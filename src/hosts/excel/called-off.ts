/** Carries what a caller threw, to call the work off, out through Excel's own handling of errors. */
export class CalledOff extends Error {
  constructor(readonly thrown: unknown) {
    super("called off");
  }
}

/** Tells a caller of progress. @throws CalledOff where the caller throws. */
export function tellProgress(progress: ((done: number) => void) | undefined, done: number): void {
  try {
    progress?.(done);
  } catch (thrown) {
    throw new CalledOff(thrown);
  }
}
