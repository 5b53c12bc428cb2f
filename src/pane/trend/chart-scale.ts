/** Steps of an axis are these times a power of ten. */
const ROUND = [1, 2, 5, 10];

/**
 * Round numbers along an axis.
 *
 * @param low Least value that the axis shows.
 * @param high Greatest value.
 * @param most How many there is room for, 2 or more.
 * @param least The least step, such as 1 where things are counted.
 */
export function roundNumbers(low: number, high: number, most: number, least = 0): number[] {
  const rough = Math.max((high - low) / Math.max(1, most - 1), least, Number.EPSILON);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * (ROUND.find((times) => times * power >= rough * 0.999999) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  // A multiple of the step may carry a trace of the way it was computed.
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) =>
    Number(((first + i) * step).toPrecision(12)),
  );
}

/** The place of a value between two ends, drawn from one position to another. */
export function linear(
  [low, high]: readonly [low: number, high: number],
  [from, to]: readonly [from: number, to: number],
): (value: number) => number {
  const share = (to - from) / (high - low);
  return (value) => Math.round((from + (value - low) * share) * 100) / 100;
}
