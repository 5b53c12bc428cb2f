/** From the first to the last portion of a sample at most this many minutes pass. */
export const SAMPLING_WITHIN = 15;

/** The air test starts at most this many minutes after the last portion. */
export const START_WITHIN = 5;

/** Moulding of specimens begins at most this many minutes after the sample is made one. */
export const MOULD_WITHIN = 15;

/** The sample is taken from the middle of the load: neither of the first nor of the last tenth, %. */
export const MIDDLE_OF_LOAD = { from: 10, to: 90 } as const;

const DAY = 1440;

/**
 * Minutes from one time of day to another, the shorter way round midnight: 23:58 to 00:03 is 5.
 *
 * @param from Minutes since midnight.
 * @param to Minutes since midnight.
 * @returns Below zero when the second time lies before the first.
 */
export function minutesBetween(from: number, to: number): number {
  const forward = (((to - from) % DAY) + DAY) % DAY;
  return forward > DAY / 2 ? forward - DAY : forward;
}
