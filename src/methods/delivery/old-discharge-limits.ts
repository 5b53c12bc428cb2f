/** Limits on delivery that an edition of ASTM C94 sets by itself. */
export interface DischargeLimits {
  readonly minutes?: number;
  readonly revolutions?: number;
}

/** Until it left the standard, discharge within 1½ hours (trade news on C94/C94M-21). */
const MINUTES = { until: 2021, limit: 90 };

/** Until they left the standard, 300 revolutions of the drum (trade news; C94-17a has none). */
const REVOLUTIONS = { until: 2013, limit: 300 };

const EDITION = /\bc[\s-]*94(?:\s*\/\s*c?[\s-]*94\s*m)?\s*[-–:]\s*(\d{2}|\d{4})(?!\d)/i;

/**
 * The limits of an edition of ASTM C94 that a text names, such as "ASTM C94-98". From C94/C94M-21 on
 * the purchaser states the time, or else the producer, and there is none by default; so an edition
 * that is not named gives none.
 */
export function oldDischargeLimits(text: string): DischargeLimits {
  const written = EDITION.exec(text)?.[1];
  if (written === undefined) return {};
  const year = written.length === 4 ? Number(written) : centuryOf(Number(written));
  return {
    ...(year < MINUTES.until && { minutes: MINUTES.limit }),
    ...(year < REVOLUTIONS.until && { revolutions: REVOLUTIONS.limit }),
  };
}

/** The first edition is of 1933. */
function centuryOf(year: number): number {
  return year >= 33 ? 1900 + year : 2000 + year;
}
