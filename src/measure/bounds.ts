import { at, issue, type Issue } from "./issue";

/** What is wrong with a value that must lie above zero: the issue `not-above-zero`, in its place. */
export function notAboveZero(value: number, place: string): Issue | undefined {
  return value > 0 ? undefined : at(place, issue("not-above-zero", { value }));
}

/** What is wrong with a value that must be zero or more: the issue `below-zero`, in its place. */
export function belowZero(value: number, place: string): Issue | undefined {
  return value >= 0 ? undefined : at(place, issue("below-zero", { value }));
}

/** What is wrong with a percentage: the issue `not-a-percentage`, in its place. */
export function notAPercentage(value: number, place: string): Issue | undefined {
  const fits = value >= 0 && value <= 100;
  return fits ? undefined : at(place, issue("not-a-percentage", { value }));
}
