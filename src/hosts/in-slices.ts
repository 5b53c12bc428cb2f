/** Longer than this the page must not stand still. */
const SLICE_MS = 25;

/** Lets the page breathe, with the share that is done where it is known. It throws to end the work. */
export type Pause = (share?: number) => Promise<void>;

/** Long work in steps. Each yields the share that is done; the last gives what comes of it. */
export type Steps<T> = Generator<number, T>;

/**
 * Runs long work in slices, so that the page can be used meanwhile.
 *
 * @param steps The work; it yields the share that is done.
 * @param pause Called between slices.
 */
export async function inSlices<T>(steps: Steps<T>, pause: Pause): Promise<T> {
  let since = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() - since < SLICE_MS) continue;
    await pause(step.value);
    since = performance.now();
  }
}

/** Lets the page come in. */
export const breathe: Pause = () => new Promise((resolve) => setTimeout(resolve));

/** The same without a pause. */
export function atOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Makes something of each, a few of them a step. */
export function* each<T, R>(
  items: readonly T[],
  make: (item: T, index: number) => R,
  perStep = 50,
): Steps<R[]> {
  const made: R[] = [];
  for (const [i, item] of items.entries()) {
    made.push(make(item, i));
    if (made.length % perStep === 0) yield made.length / items.length;
  }
  return made;
}
