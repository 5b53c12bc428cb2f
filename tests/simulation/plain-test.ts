import { Random } from "./random";
import {
  beforeRounding,
  CORRECTIONS,
  finalOf,
  MARK,
  PERCENT,
  QUARTER,
  rounded,
  SCALE,
  subtracted,
  UNITS,
  type Unit,
} from "./plain-method";

/** What a sheet has columns for; it differs from sheet to sheet. */
export interface Layout {
  readonly unit: Unit;
  /** Whether the amount of alcohol is written with its unit, "48 oz", or the unit is in the header. */
  readonly unitInCell: boolean;
  readonly hasFinal: boolean;
  readonly hasFactor: boolean;
  /** Whether the sheet records foam, times, the meter and so on. */
  readonly isFull: boolean;
}

/** One test that was made and recorded by the method, in thousandths of a percent. */
export interface PlainTest {
  readonly unit: Unit;
  /** Alcohol, in marks of the measure. */
  readonly marks: number;
  /** The amount as recorded, in the unit of the sheet. */
  readonly amount: number;
  readonly readings: readonly number[];
  readonly recordedFinal: number;
  readonly cups: number;
  /** An aggregate correction factor that stands in the sheet without being due. */
  readonly factor: number;
  readonly correction: number;
  readonly reported: number;
}

/**
 * The share of tests whose second reading is that of the first, a quarter away, or further away and
 * therefore followed by a third. Our own guess at ordinary work, set before anything was measured.
 */
const SAME_SECOND = 0.5;
const QUARTER_AWAY = 0.35;
/** The share of tests, of air-rich concrete, whose level lies beyond the scale. */
const NEEDS_CUPS = 0.15;

export function randomLayout(random: Random): Layout {
  return {
    unit: random.one(UNITS),
    unitInCell: random.chance(0.3),
    hasFinal: random.chance(0.5),
    hasFactor: random.chance(0.15),
    isFull: random.chance(0.5),
  };
}

export function randomTest(random: Random, { unit }: Layout): PlainTest {
  for (;;) {
    const marks = random.whole(1, CORRECTIONS[unit].length);
    const cups = random.chance(NEEDS_CUPS) ? random.whole(1, 4) : 0;
    const readings = randomReadings(random, cups);
    const correction = subtracted(unit, marks);
    const final = readings && finalOf(readings);
    if (!readings || final! + cups * PERCENT < correction) continue;
    return {
      unit,
      marks,
      amount: amountOf(unit, marks),
      readings,
      recordedFinal: final!,
      cups,
      factor: random.whole(1, 10) * 100,
      correction,
      reported: rounded(beforeRounding(final!, correction, cups)),
    };
  }
}

/** Marks as an amount in the unit, free of binary noise. */
export function amountOf(unit: Unit, marks: number): number {
  return Number((marks * MARK[unit]).toFixed(2));
}

/** Readings as the method lets them stand; none where these would leave the scale or need no cups. */
function randomReadings(random: Random, cups: number): number[] | undefined {
  // Cups bring the level back on the scale, so it stood beyond 9 % without them.
  const least = cups > 0 ? SCALE - cups * PERCENT + QUARTER : 0;
  const first = least + random.whole(0, (SCALE - least) / QUARTER) * QUARTER;
  const readings = [first, first + secondAway(random)];
  if (Math.abs(readings[0]! - readings[1]!) > QUARTER) {
    readings.push(readings[1]! + random.whole(-1, 1) * QUARTER);
  }
  return readings.every((reading) => reading >= 0 && reading <= SCALE) ? readings : undefined;
}

function secondAway(random: Random): number {
  const drawn = random.next();
  if (drawn < SAME_SECOND) return 0;
  const quarters = drawn < SAME_SECOND + QUARTER_AWAY ? 1 : random.whole(2, 4);
  return (random.chance(0.5) ? 1 : -1) * quarters * QUARTER;
}
