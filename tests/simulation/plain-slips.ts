import {
  beforeRounding,
  CORRECTIONS,
  MARK,
  PERCENT,
  QUARTER,
  rounded,
  subtracted,
  UNITS,
  type Unit,
} from "./plain-method";
import { amountOf, type Layout, type PlainTest } from "./plain-test";
import type { Random } from "./random";

/** Makes a sound test into one with the slip; nothing where the slip cannot happen. */
export type MakesSlip = (test: PlainTest, random: Random, layout: Layout) => PlainTest | undefined;

/** The result as reported, when parts of it are other than they should be. */
function reports(
  test: PlainTest,
  { final = finalOf(test), correction = test.correction, cups = test.cups, step = QUARTER } = {},
): PlainTest {
  return { ...test, reported: rounded(beforeRounding(final, correction, cups), step) };
}

function finalOf({ recordedFinal }: PlainTest): number {
  return recordedFinal;
}

/** Each slip once, in the words of the trade; nothing else is wrong in the record. */
export const PLAIN_SLIPS: Readonly<Record<string, MakesSlip>> = {
  "correction-forgotten": (test) => reports(test, { correction: 0 }),

  "correction-added": (test) => reports(test, { correction: -test.correction }),

  // The amount lies between the row of 2 pt, which subtracts nothing, and the row of 3 pt, and the
  // next row up is taken although nothing is due below 2.5 pt.
  "correction-not-due": (test) => {
    const from = { pt: 2, oz: 32, L: 0.9 }[test.unit];
    const isBetween = test.amount > from && test.correction === 0;
    return isBetween ? reports(test, { correction: 300 }) : undefined;
  },

  "cups-forgotten": (test) => reports(test, { cups: 0 }),
  "cups-counted-twice": (test) => reports(test, { cups: 2 * test.cups }),
  "cups-subtracted": (test) => reports(test, { cups: -test.cups }),

  "aggregate-factor-subtracted": (test, _, { hasFactor }) =>
    hasFactor ? reports(test, { correction: test.correction + test.factor }) : undefined,

  // Who takes the first reading for the final one writes it there, where there is a place for it.
  "first-reading-used": (test) => withFinal(test, test.readings[0]!),

  "readings-averaged": (test) => {
    const sum = test.readings.reduce((before, reading) => before + reading, 0);
    return withFinal(test, sum / test.readings.length);
  },

  // A slip of the pen: a final reading that was never read.
  "recorded-final-used": (test, random, { hasFinal }) => {
    const final = test.recordedFinal + random.one([-4, -2, -1, 1, 2, 4]) * QUARTER;
    return hasFinal && !test.readings.includes(final) ? withFinal(test, final) : undefined;
  },

  "rounded-to-other-step": (test, random) =>
    reports(test, { step: random.one([PERCENT / 10, PERCENT / 2]) }),

  "unit-mistaken": readAsOtherUnit,

  "digits-swapped": (test, random) => {
    const digits = [...String(test.reported / 10).padStart(3, "0")];
    const at = random.whole(0, digits.length - 2);
    [digits[at], digits[at + 1]] = [digits[at + 1]!, digits[at]!];
    return { ...test, reported: Number(digits.join("")) * 10 };
  },
};

function withFinal(test: PlainTest, final: number): PlainTest {
  return { ...reports(test, { final }), recordedFinal: final };
}

/**
 * The alcohol is measured and looked up in one unit, and its number stands in a sheet of another.
 * What the record gives is then the sheet's unit; the reported result is that of the measure.
 */
function readAsOtherUnit(test: PlainTest, random: Random): PlainTest | undefined {
  const measured = random.one(UNITS.filter((unit) => unit !== test.unit));
  const marks = random.whole(1, CORRECTIONS[measured].length);
  const amount = amountOf(measured, marks);
  const correction = correctionIn(test.unit, amount);
  if (correction === undefined) return undefined;
  const used = subtracted(measured, marks);
  return { ...reports(test, { correction: used }), amount, correction };
}

/** The correction for an amount that may lie between two marks; nothing beyond the table. */
function correctionIn(unit: Unit, amount: number): number | undefined {
  const marks = amount / MARK[unit];
  const [below, above] = [Math.floor(marks + 1e-9), Math.ceil(marks - 1e-9)];
  const end = CORRECTIONS[unit].length;
  if (above > end) return undefined;
  const least = { pt: 2.5, oz: 40, L: 1.2 }[unit];
  if (amount < least) return 0;
  const [low, high] = [subtracted(unit, below), subtracted(unit, above)];
  return low + (marks - below) * (high - low);
}

/** The result that the record gives, whatever was reported. */
export function soundResult(test: PlainTest, sound: PlainTest): number {
  return rounded(beforeRounding(sound.recordedFinal, test.correction, test.cups));
}
