import { Problem } from "./problem";

/** Holds a value above zero. @throws Problem `not-above-zero`, with the name of the value. */
export function aboveZero(value: number, name: string): number {
  if (value > 0) return value;
  throw new Problem("not-above-zero", { name, value });
}

/** Holds a value at zero or above. @throws Problem `below-zero`, with the name of the value. */
export function zeroOrMore(value: number, name: string): number {
  if (value >= 0) return value;
  throw new Problem("below-zero", { name, value });
}

/** Holds a percentage between 0 and 100. @throws Problem `not-a-percentage`, with its name. */
export function percentage(value: number, name: string): number {
  if (value >= 0 && value <= 100) return value;
  throw new Problem("not-a-percentage", { name, value });
}
