/** Work in steps, each of which yields the share that is done. */
export type Steps<T> = Generator<number, T>;

/** Does all the steps in one go. */
export function inOneGo<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The steps of a part of the work, with their share of the whole. */
export function* shareOf<T>(
  [from, to]: readonly [from: number, to: number],
  steps: Steps<T>,
): Steps<T> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}
