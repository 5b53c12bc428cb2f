/** From here on the tail is worked out as a continued fraction, nearer the middle as a series. */
const TAIL_BEGINS = 3;

/** Enough levels for full precision where the tail begins, more than enough beyond. */
const FRACTION_LEVELS = 120;

/**
 * Share of a standard normal distribution that lies at or below a point.
 *
 * @param z Point, in standard deviations from the mean; infinite values are allowed.
 * @returns 0 to 1, to about 1e-15, and to about 1e-13 of itself far out in the lower tail.
 * @see Abramowitz and Stegun, 26.2.11 (series) and 26.2.14 (continued fraction).
 */
export function normalShareBelow(z: number): number {
  if (z > TAIL_BEGINS) return 1 - upperTail(z);
  if (z < -TAIL_BEGINS) return upperTail(-z);
  let term = z;
  let sum = z;
  for (let odd = 3; Math.abs(term) > 1e-18; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 + normalDensity(z) * sum;
}

/**
 * Share of a standard normal distribution between two points; exact also where both lie far out on
 * the same side.
 */
export function normalShareBetween(from: number, to: number): number {
  return from > 0
    ? normalShareBelow(-from) - normalShareBelow(-to)
    : normalShareBelow(to) - normalShareBelow(from);
}

/**
 * The point below which a given share of a standard normal distribution lies.
 *
 * @param share Above 0 and below 1.
 * @returns Standard deviations from the mean, to about 1e-14 of itself.
 * @see Abramowitz and Stegun, 26.2.23, for the first guess, which is then refined.
 */
export function normalPointAt(share: number): number {
  if (share > 0.5) return -normalPointAt(1 - share);
  let z = firstGuess(share);
  for (let round = 0; round < 4; round++) {
    // Halley's step: the density's own slope at z is -z times the density.
    const step = (normalShareBelow(z) - share) / normalDensity(z);
    z -= step / (1 + (z * step) / 2);
  }
  return z;
}

function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

function upperTail(z: number): number {
  if (z === Infinity) return 0;
  let fraction = z;
  for (let level = FRACTION_LEVELS; level >= 1; level--) fraction = z + level / fraction;
  return normalDensity(z) / fraction;
}

function firstGuess(share: number): number {
  const t = Math.sqrt(-2 * Math.log(share));
  const above = 2.515517 + t * (0.802853 + t * 0.010328);
  const below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  return above / below - t;
}
