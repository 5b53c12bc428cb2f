/** Below this, the continued fraction has come to rest. */
const AT_REST = 1e-16;

/** Far more terms than the fraction needs for any number of degrees of freedom. */
const MOST_TERMS = 500;

/** From here on the series for the ratio of two gamma functions is exact to the last digits. */
const SERIES_FROM = 40;

/**
 * The chance that Student's t lies as far from zero as a value, or farther, on either side.
 *
 * @param t Value of t; infinite values are allowed.
 * @param freedom Degrees of freedom, above 0; need not be whole (Welch–Satterthwaite).
 * @returns 0 to 1, to about 1e-12.
 * @see Abramowitz and Stegun, 26.7.1 with 26.5.8 (incomplete beta function as a continued fraction).
 */
export function studentTails(t: number, freedom: number): number {
  if (t === 0) return 1;
  if (!Number.isFinite(t)) return 0;
  const square = t * t;
  return betaShare(freedom / (freedom + square), square / (freedom + square), freedom / 2);
}

/** I_x(a, ½), given x and 1 − x, so that neither loses its digits. */
function betaShare(x: number, rest: number, a: number): number {
  const b = 0.5;
  // x^a (1 − x)^½ / B(a, ½), where B(a, ½) = Γ(a) √π / Γ(a + ½); a large power of x near 1 by its logarithm.
  const power = Math.exp(-a * Math.log1p(rest / x));
  const front = (power * Math.sqrt(rest) * gammaRatio(a)) / Math.sqrt(Math.PI);
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(rest, b, a)) / b;
}

/** The continued fraction of the incomplete beta function, evaluated from the front (Lentz). */
function fraction(x: number, a: number, b: number): number {
  let numerator = 1;
  let denominator = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = denominator;
  for (let m = 1; m <= MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let step = 1;
    for (const term of [even, odd]) {
      denominator = 1 / (1 + term * denominator);
      numerator = 1 + term / numerator;
      step = numerator * denominator;
      value *= step;
    }
    if (Math.abs(step - 1) < AT_REST) break;
  }
  return value;
}

/** Γ(a + ½) / Γ(a): a series in 1/a, moved up to where it holds. */
function gammaRatio(a: number): number {
  if (a < SERIES_FROM) return (gammaRatio(a + 1) * a) / (a + 0.5);
  const r = 1 / a;
  const series = 1 - r / 8 + r ** 2 / 128 + (5 * r ** 3) / 1024 - (21 * r ** 4) / 32768;
  return Math.sqrt(a) * (series - (399 * r ** 5) / 262144 + (869 * r ** 6) / 4194304);
}
