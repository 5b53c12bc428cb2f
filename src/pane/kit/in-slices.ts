/** Longer than this the page must not stand still. */
const SLICE_MS = 40;

/**
 * Runs long work in slices, so that the page can be used meanwhile.
 *
 * @param steps The work; it yields the share that is done.
 * @param pause Called between slices; it lets the page breathe, and throws to stop the work.
 */
export async function inSlices<T>(
  steps: Generator<number, T>,
  pause: (share: number) => Promise<void>,
): Promise<T> {
  let since = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() - since < SLICE_MS) continue;
    await pause(step.value);
    since = performance.now();
  }
}
