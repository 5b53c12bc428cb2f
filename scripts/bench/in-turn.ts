/** How often each side of a pair runs before it is timed, and how often then. */
export interface Rounds {
  readonly warm: number;
  readonly timed: number;
}

/** Microseconds of processor time that a run takes, whatever else the machine does. */
export function processorMicroseconds(run: () => unknown): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return user + system;
}

/** Milliseconds that a run takes. */
function milliseconds(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/**
 * The median of how much longer one takes than the other. Both are warmed up and then run in turn, so
 * that whatever else the machine does falls on both.
 */
export function medianRatio(
  one: () => unknown,
  other: () => unknown,
  { warm, timed }: Rounds,
): number {
  for (let i = 0; i < warm; i++) [one(), other()];
  return median(Array.from({ length: timed }, () => milliseconds(one) / milliseconds(other)));
}

/** The median of some numbers. */
export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}
