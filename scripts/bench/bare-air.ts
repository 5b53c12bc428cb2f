/** Rows of the correction table that are corrected for, in ounces. */
const OUNCES = [32, 48, 64, 80];
const SUBTRACT = [0, 0.3, 0.6, 0.9];

const exact = (value: number) => Math.round(value * 1e9) / 1e9;

/** FRESH.AIR over a column as a bare loop: the same checks and arithmetic, for sound rows only. */
export function bareAir(readings: number[][], cups: number[][], ounces: number[][]): number[][] {
  return readings.map((row, i) => [airOf(row[0]!, cups[i]![0]!, ounces[i]![0]!)]);
}

function airOf(reading: number, cups: number, ounces: number): number {
  for (const value of [reading, cups, ounces]) {
    if (typeof value !== "number" || !Number.isFinite(value)) throw new Error("not a number");
  }
  if (reading < 0 || reading > 9 || !Number.isInteger(exact(reading / 0.25)))
    throw new Error("off");
  if (cups < 0 || !Number.isInteger(cups)) throw new Error("no count");
  const unrounded = exact(reading - correctionFor(ounces) + cups);
  if (unrounded < 0) throw new Error("below zero");
  const [whole, step] = [Math.round(unrounded * 1e9), 0.25e9];
  const over = whole % step;
  const below = (whole - over) / step;
  const up = 2 * over > step || (2 * over === step && below % 2 !== 0);
  return ((below + (up ? 1 : 0)) * step) / 1e9;
}

function correctionFor(ounces: number): number {
  if (ounces < 0 || ounces > 80) throw new Error("beyond the table");
  if (ounces < 40) return 0;
  const upper = OUNCES.findIndex((row) => row >= ounces);
  const share = (ounces - OUNCES[upper - 1]!) / (OUNCES[upper]! - OUNCES[upper - 1]!);
  return exact(SUBTRACT[upper - 1]! + share * (SUBTRACT[upper]! - SUBTRACT[upper - 1]!));
}
